import { scaledToOne } from '../../stats/scaled-to-one.ts';
/** Snaps other offenses may be worth beside an offense's own: the grid on which that is learned, 2, 2.8, 4 … 2048. */
// A power with a fraction is rounded otherwise from engine to engine, the square root of two is not.
export const WORTHS: Float64Array = Float64Array.from(
  { length: 21 },
  (_, i) => 2 ** (1 + Math.floor(i / 2)) * (i % 2 === 0 ? 1 : Math.SQRT2),
);

/** The coarser grid on which the worth of single cells is learned, 2, 4, 8 ... 2048: they tell less. */
export const CELL_WORTHS: Float64Array = WORTHS.filter((_, i) => i % 2 === 0);

/** A log-normal belief about a worth. */
export interface WorthBelief {
  readonly median: number;
  /** Standard deviation of the natural logarithm. */
  readonly spread: number;
}

/** The chance of each worth of a grid under a log-normal belief; sums to 1. */
export function beliefOnGrid({ median, spread }: WorthBelief, worths = WORTHS): Float64Array {
  return scaledToOne(worths.map((worth) => -((Math.log(worth / median) / spread) ** 2) / 2));
}

/** A belief weighed by evidence: the logarithm of the chance of what was seen, for each worth of the grid. */
export function weighed(belief: Float64Array, evidence: Float64Array): Float64Array {
  return scaledToOne(belief.map((chance, i) => Math.log(chance) + (evidence[i] as number)));
}
