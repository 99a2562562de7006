import { NOT_KNOWN } from '../snap/not-known.ts';
import type { LeftOutShares } from './left-out-shares.ts';

/** All snaps on which a target was charted: how many of each class came, and how many were expected. */
export interface TellTotals {
  readonly trials: number;
  readonly counts: Float64Array;
  readonly sums: Float64Array;
}

/** Adds up what came and what was expected on every charted snap. */
export function tellTotals(codes: Uint8Array, { classes, shares }: LeftOutShares): TellTotals {
  const [counts, sums] = [new Float64Array(classes), new Float64Array(classes)];
  let trials = 0;
  codes.forEach((code, row) => {
    if (code === NOT_KNOWN) return;
    trials++;
    counts[code] = (counts[code] as number) + 1;
    for (let k = 0; k < classes; k++) sums[k] = (sums[k] as number) + (shares[row * classes + k] as number);
  });
  return { trials, counts, sums };
}

/** One class on some snaps. */
export interface ClassCount {
  readonly count: number;
  /** Snaps expected. */
  readonly sum: number;
  readonly trials: number;
}

/** Evidence, in snaps with an even chance times four, that the level is as expected: keeps few other snaps from moving it. */
const LEVEL_WORTH = 1;

/**
 * The share expected on a cell's snaps once the expectation agrees with what came on all the other snaps: its odds times
 * one ratio (one Newton step of the logistic regression with an offset). Film that holds a habit teaches the cells above
 * the habit's own; this takes back what it taught there, for the cell's own snaps have no say in it.
 *
 * @param rest - the snaps outside of the cell
 * @see McCullagh and Nelder 1989, Generalized Linear Models, section 4.4, on scoring steps
 */
export function expectedBeside({ sum, trials }: ClassCount, rest: ClassCount): number {
  const share = sum / trials;
  if (rest.trials === 0 || share <= 0 || share >= 1) return share;
  const variance = rest.sum * (1 - rest.sum / rest.trials);
  const odds = (share / (1 - share)) * Math.exp((rest.count - rest.sum) / (variance + LEVEL_WORTH));
  return odds / (1 + odds);
}
