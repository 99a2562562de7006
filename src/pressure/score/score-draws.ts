/**
 * Points saved per ten snaps by every call in every situation, over posterior draws shared by all of them: what the
 * menu is chosen under. A call's mean over the draws is its score.
 */
export interface ScoreDraws {
  readonly calls: readonly string[];
  /** Situation ids; all situations together are not among them. */
  readonly situations: readonly string[];
  readonly count: number;
  /** At `(draw * calls + call) * situations + situation`. */
  readonly points: Float64Array;
}

/** Draws handed to the menu: enough to see how often a call makes it, few enough to solve a menu for each. */
export const MENU_DRAW_COUNT = 1000;

/** An empty set of draws to be filled call by call. */
export function emptyScoreDraws(calls: readonly string[], situations: readonly string[], count: number): ScoreDraws {
  return { calls, situations, count, points: new Float64Array(count * calls.length * situations.length) };
}

/** Writes the draws of one call in one situation; both are indices, `values` holds at least `count` draws. */
export function writeScoreDraws(
  draws: ScoreDraws,
  at: { call: number; situation: number },
  values: Float64Array,
): void {
  const { calls, situations, count, points } = draws;
  for (let i = 0; i < count; i++) {
    points[(i * calls.length + at.call) * situations.length + at.situation] = values[i] as number;
  }
}
