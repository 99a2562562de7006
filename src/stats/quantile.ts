import { quickselect, sampleStandardDeviation, mean as simpleMean } from 'simple-statistics';
import { StatsInputError } from './errors.ts';

/**
 * The `p` quantile of the values, sorted or not, by linear interpolation between order statistics.
 *
 * @param values - at least one number; left untouched
 * @param p - 0 to 1
 * @throws StatsInputError when there is no value or `p` is out of range
 * @see Hyndman and Fan 1996, The American Statistician 50:361, type 7 (the default of R)
 * @example quantile(Float64Array.of(4, 1, 3, 2), 0.25) // 1.75
 */
export function quantile(values: Float64Array, p: number): number {
  return quantileWithin(values.slice(), p);
}

/**
 * The `p` and the `1 - p` quantile of the values, from one copy of them.
 *
 * @param values - at least one number; left untouched
 * @param p - 0 to 1
 * @throws StatsInputError when there is no value or `p` is out of range
 * @see quantile
 * @example tailQuantiles(Float64Array.of(4, 1, 3, 2), 0.25) // { low: 1.75, high: 3.25 }
 */
export function tailQuantiles(values: Float64Array, p: number): { low: number; high: number } {
  const copy = values.slice();
  return { low: quantileWithin(copy, p), high: quantileWithin(copy, 1 - p) };
}

/** A quantile of values whose order may be changed. */
function quantileWithin(values: Float64Array, p: number): number {
  requireValues(values, 'quantile');
  if (!(p >= 0 && p <= 1)) throw new StatsInputError(`quantile requires a probability, got ${p}`);
  const position = p * (values.length - 1);
  const below = Math.floor(position);
  const low = selected(values, below);
  if (position === below) return low;
  // After the selection everything above `below` is to its right, so the next order statistic is their minimum.
  let high = Number.POSITIVE_INFINITY;
  for (let i = below + 1; i < values.length; i += 1) high = Math.min(high, values[i] as number);
  return low + (position - below) * (high - low);
}

function selected(values: Float64Array, rank: number): number {
  // The library selects within any indexed numbers; its types speak of plain arrays only.
  quickselect(values as unknown as number[], rank);
  return values[rank] as number;
}

/**
 * Arithmetic mean, summed with error compensation.
 *
 * @throws StatsInputError when there is no value
 */
export function mean(values: Float64Array | readonly number[]): number {
  requireValues(values, 'mean');
  return simpleMean(values as readonly number[]);
}

/**
 * Standard error of the mean: sample standard deviation over the root of the number of values.
 *
 * @returns null for a single value, whose spread is unknown
 * @throws StatsInputError when there is no value
 */
export function standardError(values: Float64Array | readonly number[]): number | null {
  requireValues(values, 'standardError');
  if (values.length === 1) return null;
  return sampleStandardDeviation(values as readonly number[]) / Math.sqrt(values.length);
}

function requireValues(values: ArrayLike<number>, what: string): void {
  if (values.length === 0) throw new StatsInputError(`${what} requires at least one value`);
}
