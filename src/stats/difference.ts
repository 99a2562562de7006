import type { Interval } from './interval.ts';
import { wilsonInterval } from './proportion-interval.ts';

/** Two independent tallies to be compared: `x1` of `n1` against `x2` of `n2`. */
export interface TwoTallies {
  readonly x1: number;
  readonly n1: number;
  readonly x2: number;
  readonly n2: number;
  /** Confidence level, strictly between 0 and 1; 0.95 when absent. */
  readonly level?: number | undefined;
}

/** The first share less the second, -1 to 1. */
export interface Difference extends Interval {
  /** Null when either tally is empty; the interval is then [-1, 1]. */
  readonly estimate: number | null;
}

const UNKNOWN: Difference = { estimate: null, low: -1, high: 1 };

/**
 * Interval for the difference of two independent shares, from the two Wilson intervals.
 *
 * @throws StatsInputError when a tally is impossible or the level is out of range
 * @see Newcombe 1998, Statistics in Medicine 17:873, method 10
 * @example newcombeDifference({ x1: 56, n1: 70, x2: 48, n2: 80 }) // 0.2, from 0.0524 to 0.3339
 */
export function newcombeDifference({ x1, n1, x2, n2, level = 0.95 }: TwoTallies): Difference {
  const first = wilsonInterval(x1, n1, level);
  const second = wilsonInterval(x2, n2, level);
  if (n1 === 0 || n2 === 0) return UNKNOWN;
  const [p1, p2] = [x1 / n1, x2 / n2];
  const estimate = p1 - p2;
  const low = estimate - Math.hypot(p1 - first.low, second.high - p2);
  const high = estimate + Math.hypot(first.high - p1, p2 - second.low);
  return { estimate, low: Math.max(-1, low), high: Math.min(1, high) };
}
