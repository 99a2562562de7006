import type { Interval } from './interval.ts';
import { wilsonInterval } from './proportion-interval.ts';

/** A share that carries its count: how often, of how many, and what that says. */
export interface Share extends Interval {
  readonly count: number;
  readonly trials: number;
  /** count / trials, 0 to 1; null when there was no trial. */
  readonly estimate: number | null;
  readonly low: number;
  readonly high: number;
}

/**
 * The share `count` of `trials` with its Wilson interval.
 *
 * @param count - at most `trials`
 * @param trials - none gives a null estimate and [0, 1]
 * @param level - confidence level, strictly between 0 and 1
 * @throws StatsInputError when the counts are impossible or the level is out of range
 * @see {@link wilsonInterval}
 * @example share(3, 10) // estimate 0.3, low 0.1077913, high 0.6032219
 */
export function share(count: number, trials: number, level = 0.95): Share {
  const { low, high } = wilsonInterval(count, trials, level);
  return { count, trials, estimate: trials === 0 ? null : count / trials, low, high };
}
