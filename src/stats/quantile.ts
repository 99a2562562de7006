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
 * The `p` and the `1 - p` quantile of the values.
 *
 * @param values - at least one number; left untouched
 * @param p - 0 to 0.5
 * @throws StatsInputError when there is no value or `p` is out of range
 * @see quantile
 * @example tailQuantiles(Float64Array.of(4, 1, 3, 2), 0.25) // { low: 1.75, high: 3.25 }
 */
export function tailQuantiles(values: Float64Array, p: number): { low: number; high: number } {
  return quantilesBetween(tailNeighbours(values, p));
}

/** The two order statistics that a quantile lies between, and how far it lies from the first to the second. */
export interface QuantileNeighbours {
  readonly below: number;
  readonly above: number;
  /** 0 to 1. */
  readonly part: number;
}

/** The neighbours of a lower quantile and of the upper one as far from the other end. */
export interface TailNeighbours {
  readonly low: QuantileNeighbours;
  readonly high: QuantileNeighbours;
}

/**
 * What the `p` and the `1 - p` quantile of the values lie between: enough to tell the quantiles of the values after any
 * change that keeps their order.
 *
 * @param values - at least one number; left untouched
 * @param p - 0 to 0.5
 * @throws StatsInputError when there is no value or `p` is out of range
 */
export function tailNeighbours(values: Float64Array, p: number): TailNeighbours {
  requireValues(values, 'quantile');
  if (!(p >= 0 && p <= 0.5)) throw new StatsInputError(`a tail requires a probability of at most 0.5, got ${p}`);
  const copy = values.slice();
  const low = neighboursWithin(copy, p, 0);
  return { low, high: neighboursWithin(copy, 1 - p, Math.floor(p * (copy.length - 1))) };
}

/**
 * The quantiles between their neighbours, each neighbour changed first.
 *
 * @param changed - keeps the order of numbers; absent where they stay as they are
 */
export function quantilesBetween(
  { low, high }: TailNeighbours,
  changed: (value: number) => number = (value) => value,
): { low: number; high: number } {
  return { low: between(low, changed), high: between(high, changed) };
}

function between({ below, above, part }: QuantileNeighbours, changed: (value: number) => number): number {
  const least = changed(below);
  return part === 0 ? least : least + part * (changed(above) - least);
}

/** A quantile of values whose order may be changed. */
function quantileWithin(values: Float64Array, p: number): number {
  requireValues(values, 'quantile');
  if (!(p >= 0 && p <= 1)) throw new StatsInputError(`quantile requires a probability, got ${p}`);
  return between(neighboursWithin(values, p, 0), (value) => value);
}

/** @param from - place from which on all values are at least as large as those before it, and where the quantile lies */
function neighboursWithin(values: Float64Array, p: number, from: number): QuantileNeighbours {
  const position = p * (values.length - 1);
  const rank = Math.floor(position);
  const below = selected(values, rank, from);
  if (position === rank) return { below, above: below, part: 0 };
  // After the selection everything above `rank` is to its right, so the next order statistic is their minimum.
  let above = Number.POSITIVE_INFINITY;
  for (let i = rank + 1; i < values.length; i += 1) if ((values[i] as number) < above) above = values[i] as number;
  return { below, above, part: position - rank };
}

function selected(values: Float64Array, rank: number, from: number): number {
  // The library selects within any indexed numbers; its types speak of plain arrays only.
  quickselect(values as unknown as number[], rank, from);
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
