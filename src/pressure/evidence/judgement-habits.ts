import { type Film, numberAt, textAt } from '../../game/film.ts';
import { namedWords } from '../snap/named-words.ts';
import { LOOK_PRIOR_SNAPS } from './judgement-looks.ts';

/** A timed screen out by then was quick, to a receiver; release times of screens have two humps with a dip here. */
export const SLOW_SCREEN_SECONDS = 1.8;

/** What a chart says of the two answers the sheet splits in halves. */
export interface AnswerHabits {
  /** Share of screens that are slow, to the back or the tight end, 0 to 1. */
  readonly slowScreens: number;
  /** Share of runs that are draws, 0 to 1. */
  readonly draws: number;
}

/**
 * How the offense's screens and runs split, pulled to what is typical. A screen is told by its release time, a draw by
 * a concept whose name says so; where neither was charted or told apart the typical split stands.
 */
export function answerHabits(chart: Film): AnswerHabits {
  const screens = { count: 0, trials: 0 };
  const draws = { count: 0, trials: 0 };
  const isDraw = namedWords(chart, 'concept', /draw/i);
  for (let i = 0; i < chart.size; i++) {
    tally(screens, slowScreenAt(chart, i));
    tally(draws, textAt(chart, 'play_kind', i) === 'run' ? isDraw(i) : undefined);
  }
  return { slowScreens: pulled(screens, TYPICAL.slowScreens), draws: pulled(draws, TYPICAL.draws) };
}

const TYPICAL: AnswerHabits = { slowScreens: 0.5, draws: 0.05 }; // judgement

interface Tally {
  count: number;
  trials: number;
}

function tally(into: Tally, hit: boolean | undefined): void {
  if (hit === undefined) return;
  into.trials += 1;
  if (hit) into.count += 1;
}

function slowScreenAt(chart: Film, index: number): boolean | undefined {
  if (textAt(chart, 'play_kind', index) !== 'screen') return undefined;
  const seconds = numberAt(chart, 'time_to_throw', index);
  return seconds === undefined ? undefined : seconds >= SLOW_SCREEN_SECONDS;
}

function pulled({ count, trials }: Tally, typical: number): number {
  return (count + LOOK_PRIOR_SNAPS * typical) / (trials + LOOK_PRIOR_SNAPS);
}
