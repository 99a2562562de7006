import { bisect } from 'simple-statistics';
import type { Interval } from './interval.ts';
import { normalWidth } from './normal.ts';
import { wilsonInterval } from './proportion-interval.ts';
import { requireCounts } from './require-counts.ts';

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

/**
 * Interval for the difference of two independent shares by inverting the score test.
 *
 * @throws StatsInputError when a tally is impossible or the level is out of range
 * @see Miettinen and Nurminen 1985, Statistics in Medicine 4:213 (variance with the factor N / (N - 1))
 * @example miettinenNurminen({ x1: 9, n1: 10, x2: 3, n2: 10 }) // 0.6, from 0.1700 to 0.8406
 */
export function miettinenNurminen({ x1, n1, x2, n2, level = 0.95 }: TwoTallies): Difference {
  requireCounts(x1, n1);
  requireCounts(x2, n2);
  const z = normalWidth(level);
  if (n1 === 0 || n2 === 0) return UNKNOWN;
  const estimate = x1 / n1 - x2 / n2;
  const score = (difference: number) => scoreStatistic({ x1, n1, x2, n2 }, difference);
  const low = crossing((difference) => score(difference) - z, -1, estimate);
  const high = crossing((difference) => score(difference) + z, estimate, 1);
  return { estimate, low, high };
}

const WIDTH_TOLERANCE = 1e-12; // judgement: far below any printed digit
const MOST_HALVINGS = 60; // 2 halved 60 times is below the spacing of doubles near 1

/** The root of a falling function on [start, end], or the end it does not cross before. */
function crossing(falling: (x: number) => number, start: number, end: number): number {
  if (falling(start) <= 0) return start;
  if (falling(end) >= 0) return end;
  return bisect(falling, start, end, MOST_HALVINGS, WIDTH_TOLERANCE);
}

function scoreStatistic({ x1, n1, x2, n2 }: TwoTallies, difference: number): number {
  const gap = x1 / n1 - x2 / n2 - difference;
  if (Math.abs(gap) < 1e-15) return 0;
  const p2 = constrainedSecondShare({ x1, n1, x2, n2 }, difference);
  const p1 = Math.min(1, Math.max(0, p2 + difference));
  const total = n1 + n2;
  const variance = ((p1 * (1 - p1)) / n1 + (p2 * (1 - p2)) / n2) * (total / (total - 1));
  return gap / Math.sqrt(Math.max(variance, Number.MIN_VALUE));
}

/** Maximum likelihood of the second share when the difference is fixed: the closed root of the paper's cubic. */
function constrainedSecondShare({ x1, n1, x2, n2 }: TwoTallies, difference: number): number {
  const total = n1 + n2;
  const square = (n1 + 2 * n2) * difference - total - (x1 + x2);
  const linear = (n2 * difference - total - 2 * x2) * difference + (x1 + x2);
  const constant = x2 * difference * (1 - difference);
  const shift = square / (3 * total);
  const q = shift ** 3 - (square * linear) / (6 * total * total) + constant / (2 * total);
  const radius = Math.sqrt(Math.max(0, shift * shift - linear / (3 * total)));
  const size = q >= 0 ? radius : -radius;
  const ratio = size === 0 ? 0 : Math.min(1, Math.max(-1, q / size ** 3));
  const angle = (Math.PI + Math.acos(ratio)) / 3;
  return Math.min(1, Math.max(0, 2 * size * Math.cos(angle) - shift));
}
