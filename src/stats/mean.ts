import { sampleStandardDeviation, mean as simpleMean } from 'simple-statistics';
import { StatsInputError } from './errors.ts';

/**
 * Arithmetic mean, summed with error compensation.
 *
 * @throws StatsInputError when there is no value
 */
export function mean(values: Float64Array | readonly number[]): number {
  requireValues(values, 'mean');
  return simpleMean(values as readonly number[]);
}

/** Arithmetic mean, or null when there is no value. */
export function meanOrNull(values: readonly number[]): number | null {
  return values.length === 0 ? null : mean(values);
}

/**
 * Standard error of the mean: sample standard deviation over the root of the number of values.
 *
 * @returns null for a single value: its spread is unknown
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
