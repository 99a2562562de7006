import { StatsInputError } from './errors.ts';

/**
 * Refuses impossible counts: negative, not finite, or more successes than trials.
 * Fractions pass, since weighted and effective counts are fractions.
 *
 * @throws StatsInputError when the counts are impossible
 */
export function requireCounts(successes: number, trials: number): void {
  requireNonNegative(successes, 'successes');
  requireNonNegative(trials, 'trials');
  if (successes > trials) {
    throw new StatsInputError(`successes must not exceed trials, got ${successes} of ${trials}`);
  }
}

/**
 * Refuses a negative, infinite or undefined amount.
 *
 * @throws StatsInputError when `value` is not a finite number of at least 0
 */
export function requireNonNegative(value: number, what: string): void {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
    throw new StatsInputError(`${what} must be a finite number of at least 0, got ${value}`);
  }
}

/**
 * Refuses anything but a whole number of at least 0.
 *
 * @throws StatsInputError when `value` is not such a number
 */
export function requireWhole(value: number, what: string): void {
  requireNonNegative(value, what);
  if (!Number.isInteger(value)) throw new StatsInputError(`${what} must be a whole number, got ${value}`);
}

/**
 * The sum of category counts, after refusing impossible ones.
 *
 * @throws StatsInputError when there is no category or a count is negative, infinite or undefined
 */
export function totalCount(counts: readonly number[]): number {
  if (counts.length === 0) throw new StatsInputError('category counts require at least one category');
  let total = 0;
  for (const count of counts) {
    requireNonNegative(count, 'a category count');
    total += count;
  }
  return total;
}
