import type { ScoreDraws } from '../score/score-draws.ts';
import { chooseMenu, type MenuChoice } from './choice.ts';
import type { MenuProblem } from './model.ts';

/** Posterior draws a menu is chosen for; a share of 30 is told to within 18 points. Judgement. */
export const MENU_DRAWS = 30;

/** Parts of the search looked at in one draw before its best set is taken without a proof. Judgement. */
const DRAW_PARTS = 300;

/** How often each candidate makes the menu when the scores are drawn from what is known of them. */
export interface MenuMembership {
  readonly draws: number;
  /** Draws in which the menu was proved to be the best. */
  readonly proved: number;
  /** By candidate, 0 to 1; all 0 when there is no draw. */
  readonly shares: readonly number[];
}

/**
 * Chooses the menu again under posterior draws spread evenly over those given. In a draw a call's worth moves by the same
 * points against the forecast and against every answer: what is not known is how good the call is.
 */
export function menuMembership(problem: MenuProblem, draws: ScoreDraws, { book }: MenuChoice): MenuMembership {
  const count = Math.min(MENU_DRAWS, draws.count);
  const times = problem.candidates.map(() => 0);
  let proved = 0;
  for (let k = 0; k < count; k++) {
    const drawn = drawnProblem(problem, draws, Math.floor((k * draws.count) / count));
    const choice = chooseMenu({ problem: drawn, wanted: 1, mostParts: DRAW_PARTS, known: book });
    for (const c of choice?.book.best[0]?.set ?? []) times[c] = (times[c] ?? 0) + 1;
    if (choice?.end.finished) proved++;
  }
  return { draws: count, proved, shares: times.map((hits) => (count === 0 ? 0 : hits / count)) };
}

function drawnProblem(problem: MenuProblem, draws: ScoreDraws, draw: number): MenuProblem {
  const { candidates, situations, answers } = problem;
  const callAt = new Map(draws.calls.map((call, i) => [call, i]));
  const situationAt = new Map(draws.situations.map((id, i) => [id, i]));
  const value = problem.value.map((mean, at) => {
    const call = callAt.get(candidates[Math.floor(at / situations.length)]?.call.name ?? '');
    const situation = situationAt.get(situations[at % situations.length]?.id ?? '');
    if (call === undefined || situation === undefined) return mean;
    return (draws.points[(draw * draws.calls.length + call) * draws.situations.length + situation] ?? 0) / 10;
  });
  const byAnswer = problem.byAnswer.map((worth, i) => {
    const at = Math.floor(i / answers);
    return worth + (value[at] as number) - (problem.value[at] as number);
  });
  return { ...problem, value, byAnswer };
}
