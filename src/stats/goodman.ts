import type { Interval } from './interval.ts';
import { wilsonInterval } from './proportion-interval.ts';
import { totalCount } from './require-counts.ts';

/**
 * Simultaneous intervals for the shares of several categories: each one a Wilson interval at the level that makes all
 * of them hold together with probability `level` (Bonferroni).
 *
 * @param counts - one number of at least 0 per category
 * @param level - joint confidence level, strictly between 0 and 1
 * @returns one interval per category, in input order; all [0, 1] when nothing was counted
 * @throws StatsInputError when there is no category, a count is impossible or the level is out of range
 * @see Goodman 1965, Technometrics 7:247
 * @example goodmanIntervals([10, 10]) // both 0.2759667 to 0.7240333
 */
export function goodmanIntervals(counts: readonly number[], level = 0.95): Interval[] {
  const total = totalCount(counts);
  const each = 1 - (1 - level) / counts.length;
  return counts.map((count) => wilsonInterval(count, total, each));
}
