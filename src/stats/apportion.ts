import { requireWhole, totalCount } from './require-counts.ts';

/**
 * Shares out whole seats in proportion to weights: each gets the whole part of its quota, what is left goes to the
 * largest remainders. Equal remainders go to the larger weight, then to the earlier entry.
 *
 * @param weights - one number of at least 0 per entry
 * @param seats - whole number to share out
 * @returns one whole number per entry, summing to `seats`; all 0 when every weight is 0
 * @throws StatsInputError when there is no entry, or a number is out of its range
 * @see Hamilton 1792 (Hare quota); more seats may cost an entry one of its own, the Alabama paradox
 * @example largestRemainder([47000, 16000, 15800, 12000, 6100, 3100], 10) // 5 2 1 1 1 0
 */
export function largestRemainder(weights: readonly number[], seats: number): number[] {
  requireWhole(seats, 'seats');
  const total = totalCount(weights);
  if (total === 0) return weights.map(() => 0);
  const quotas = weights.map((weight) => (weight / total) * seats);
  const given = quotas.map((quota) => Math.floor(quota + ROUNDING));
  const left = seats - given.reduce((sum, n) => sum + n, 0);
  const remainder = (i: number) => (quotas[i] as number) - (given[i] as number);
  const order = weights
    .map((_, i) => i)
    .sort((i, j) => compare(remainder(j), remainder(i)) || (weights[j] as number) - (weights[i] as number));
  for (const i of order.slice(0, left)) given[i] = (given[i] as number) + 1;
  return given;
}

/** Binary fractions: a quota this close below a whole number is that number, remainders this close are equal. */
const ROUNDING = 1e-9;

function compare(a: number, b: number): number {
  return Math.abs(a - b) <= ROUNDING ? 0 : a - b;
}
