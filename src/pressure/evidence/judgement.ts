import type { Answer, Family } from '../../game/vocabulary.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import type { AnswerHabits } from './judgement-habits.ts';
import { sheetMark } from './judgement-sheet.ts';
import { typicalOpenDataSize } from './open-data-size.ts';
import type { OutcomeValues } from './outcome-value.ts';

/**
 * What one point of the sheet does to the outcomes, before it is weighed against other evidence: it raises the odds of
 * a loss by about a fifth and lowers those of an explosive by as much, stops and gains by half that, takeaways not at
 * all. Two points then raise losses to 1.4 times what they were, about the rise open data measure between four rushers and a pressure (6.9
 * to 10%), and pressures do not make takeaways there. Judgement.
 */
export const POINT_STEP = 0.2;

const LEANS = [1, 0.5, -0.5, -1, 0] as const; // loss, stop, gain, explosive, takeaway

/** A shift of outcome shares by one sheet point, as share points that sum to 0. */
export type ShareShift = Float64Array;

/**
 * How outcome shares move for one point of the sheet: each share times its lean against the average lean. The move is
 * the same for every family, so that a mark means the same for a family with much evidence as for one with none.
 *
 * @param shares - the four-man base's shares of the outcome kinds for the answer
 */
export function pointShift(shares: Float64Array): ShareShift {
  const average = shares.reduce((sum, share, kind) => sum + share * (LEANS[kind] ?? 0), 0);
  return shares.map((share, kind) => POINT_STEP * share * ((LEANS[kind] ?? 0) - average));
}

/** Points a snap that a shift of shares saves the defense. */
export function pointsSaved(shift: ArrayLike<number>, values: OutcomeValues): number {
  return -values.reduce((sum, value, kind) => sum + value * (shift[kind] ?? 0), 0);
}

/** The sheet's mark of a family against an answer itself, whatever the look: -2 to 2. */
export function answerMark(family: Family, answer: Answer, habits: AnswerHabits): number {
  switch (answer) {
    case 'run':
      return habits.draws * sheetMark('draw', family);
    case 'quarterback_run':
      return sheetMark('quarterback_run', family);
    case 'screen': {
      const slow = habits.slowScreens;
      return slow * sheetMark('slow_screen', family) + (1 - slow) * sheetMark('quick_screen', family);
    }
    case 'quick':
      return sheetMark('quick_game', family);
    case 'dropback':
    case 'deep_shot':
      return sheetMark('held_ball', family);
    case 'movement':
      return 0;
    default:
      return answer satisfies never;
  }
}

/**
 * The share of a typical cell's evidence that is the trade's judgement before our own film speaks, 0 to 1: its snaps
 * against them and a typical open-data cell's. A mark counts by this share in every cell; without that, a family open
 * data cannot see (the spy) and an answer it cannot see (every run) would be pushed two to three times as far as the
 * rest for want of anything to hold them.
 */
export function judgementShare({ level, weights }: Pick<WeekSettings, 'level' | 'weights'>): number {
  const open = weights.open_data * typicalOpenDataSize(level);
  const total = weights.judgement_snaps + open;
  return total === 0 ? 0 : weights.judgement_snaps / total;
}
