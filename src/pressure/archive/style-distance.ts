import type { Chart } from '../../ingest/chart.ts';
import { ANSWERS } from '../../ingest/vocabulary.ts';
import type { SituationCuts } from '../../ingest/week-settings.ts';
import { motionCodes } from '../forecast/target-codes.ts';
import { answerCodes } from '../snap/answer.ts';
import { LOOKS, lookCodes, RECEIVER_LOOKS, receiverCodes } from '../snap/look.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';

/** Fewer charted snaps on either side make a trait no comparison; common practice, no source. */
const LEAST = 20;

/**
 * How far apart two offenses are in style: the mean over answers, looks, receivers and motion of half the summed
 * differences of their shares. 0 is the same, 1 nothing in common. Small samples look further apart than they are.
 *
 * @returns null when no trait was charted on 20 snaps on both sides
 */
export function styleDistance(one: Chart, other: Chart, cuts: SituationCuts): number | null {
  const distances = TRAITS.flatMap(({ classes, codes }) => {
    const [a, b] = [sharesOf(codes(one, cuts), classes), sharesOf(codes(other, cuts), classes)];
    return a && b ? [a.reduce((sum, share, k) => sum + Math.abs(share - (b[k] ?? 0)), 0) / 2] : [];
  });
  return distances.length === 0 ? null : distances.reduce((sum, d) => sum + d, 0) / distances.length;
}

interface Trait {
  readonly classes: number;
  readonly codes: (chart: Chart, cuts: SituationCuts) => Uint8Array;
}

const TRAITS: readonly Trait[] = [
  { classes: ANSWERS.length, codes: answerCodes },
  { classes: LOOKS.length, codes: lookCodes },
  { classes: RECEIVER_LOOKS.length, codes: receiverCodes },
  { classes: 2, codes: (chart) => motionCodes(chart) },
];

function sharesOf(codes: Uint8Array, classes: number): number[] | null {
  const counts = new Array<number>(classes).fill(0);
  let total = 0;
  for (const code of codes) {
    if (code === NOT_KNOWN) continue;
    counts[code] = (counts[code] ?? 0) + 1;
    total++;
  }
  return total < LEAST ? null : counts.map((count) => count / total);
}
