import { logGamma } from './beta.ts';
import { requireCounts, requireWhole } from './require-counts.ts';

/**
 * Natural logarithm of the number of ways to choose `k` of `n`.
 *
 * @throws StatsInputError unless both are whole numbers and `k` is at most `n`
 */
export function logChoose(n: number, k: number): number {
  requireWhole(k, 'the number chosen');
  requireWhole(n, 'the number to choose from');
  requireCounts(k, n);
  return logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);
}
