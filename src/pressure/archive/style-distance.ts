import { ANSWERS } from '../../game/answers.ts';
import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { motionCodes } from '../forecast/target-codes.ts';
import { answerCodes } from '../snap/answer.ts';
import { classifiedAnswers } from '../snap/classified-answers.ts';
import { LOOKS, lookCodes, RECEIVER_LOOKS, receiverCodes } from '../snap/look.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { offenseGames } from '../snap/offense-game.ts';
import { runOrPassCodes } from '../snap/run-or-pass.ts';

/** Fewer charted snaps on either side make a trait no comparison; common practice, no source. */
const LEAST = 20;

/** The traits that make a style, as a code for every snap of a chart: answer, look, receivers and motion. */
export type StyleCodes = readonly Uint8Array[];

/** How often each class of each trait was charted, in the order of {@link StyleCodes}. */
export type StyleCounts = readonly (readonly number[])[];

/**
 * How far apart two offenses are in style: the mean over answers, looks, receivers and motion of half the summed
 * differences of their shares. 0 is the same, 1 nothing in common. Small samples look further apart than they are.
 *
 * @returns null when no trait was charted on 20 snaps on both sides
 */
export function styleDistance(one: StyleCounts, other: StyleCounts): number | null {
  const distances = one.flatMap((counts, trait) => {
    const [a, b] = [sharesOf(counts), sharesOf(other[trait] ?? [])];
    return a && b ? [a.reduce((sum, share, k) => sum + Math.abs(share - (b[k] as number)), 0) / 2] : [];
  });
  return distances.length === 0 ? null : distances.reduce((sum, d) => sum + d, 0) / distances.length;
}

/** The traits of a chart's snaps. */
export function styleCodes(chart: Film, cuts: SituationCuts): StyleCodes {
  return TRAITS.map(({ codes }) => codes(chart, cuts));
}

/** Counts the traits of some snaps; `rows` are indices into the chart. */
export function countStyle(codes: StyleCodes, rows: ArrayLike<number>): StyleCounts {
  return codes.map((codesOfTrait, trait) => countRows(codesOfTrait, rows, TRAITS[trait]?.classes ?? 0));
}

/** What `whole` counts and `part`, which is in it, does not. */
export function withoutStyle(whole: StyleCounts, part: StyleCounts): StyleCounts {
  return whole.map((counts, trait) => counts.map((count, k) => count - (part[trait]?.[k] ?? 0)));
}

interface Trait {
  readonly classes: number;
  readonly codes: (chart: Film, cuts: SituationCuts) => Uint8Array;
}

const TRAITS: readonly Trait[] = [
  {
    classes: ANSWERS.length,
    codes: (chart, cuts) => classifiedAnswers(answerCodes(chart, cuts), runOrPassCodes(chart), offenseGames(chart)),
  },
  { classes: LOOKS.length, codes: lookCodes },
  { classes: RECEIVER_LOOKS.length, codes: receiverCodes },
  { classes: 2, codes: (chart) => motionCodes(chart) },
];

function countRows(codes: Uint8Array, rows: ArrayLike<number>, classes: number): number[] {
  const counts = new Array<number>(classes).fill(0);
  for (let i = 0; i < rows.length; i++) {
    const code = codes[rows[i] as number] ?? NOT_KNOWN;
    if (code !== NOT_KNOWN) counts[code] = (counts[code] as number) + 1;
  }
  return counts;
}

function sharesOf(counts: readonly number[]): number[] | null {
  const total = counts.reduce((sum, count) => sum + count, 0);
  return total < LEAST ? null : counts.map((count) => count / total);
}
