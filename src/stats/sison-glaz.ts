import { logGamma } from './beta.ts';
import type { Interval } from './interval.ts';
import { normalWidth } from './normal.ts';
import { requireWhole, totalCount } from './require-counts.ts';

/**
 * Simultaneous intervals of one common width for the shares of several categories. Narrower than Goodman's for seven
 * or more categories of similar size; misleading for rare categories and for fewer than about 25 counts.
 *
 * @param counts - one whole number per category
 * @param level - joint confidence level, strictly between 0 and 1
 * @returns one interval per category, in input order; all [0, 1] when nothing was counted
 * @throws StatsInputError when there is no category, a count is not whole or the level is out of range
 * @see Sison and Glaz 1995, Journal of the American Statistical Association 90:366; May and Johnson 2000, Journal of
 * Statistical Software 5(6)
 */
export function sisonGlazIntervals(counts: readonly number[], level = 0.95): Interval[] {
  const total = totalCount(counts);
  for (const count of counts) requireWhole(count, 'a category count');
  normalWidth(level);
  if (total === 0) return counts.map(() => ({ low: 0, high: 1 }));
  const { below, fraction } = halfWidth(counts, total, level);
  return counts.map((count) => ({
    low: Math.max(0, (count - below) / total),
    high: Math.min(1, (count + below + 2 * fraction) / total),
  }));
}

/** The largest half-width, in counts, whose coverage stays below the level, and how far into the next step it lies. */
function halfWidth(counts: readonly number[], total: number, level: number): { below: number; fraction: number } {
  let before = 0;
  for (let width = 1; width <= total; width += 1) {
    const covered = coverage(counts, total, width);
    if (covered >= level) return { below: width - 1, fraction: (level - before) / (covered - before) };
    before = covered;
  }
  return { below: total, fraction: 0 };
}

/** Probability that every category of a multinomial stays within `width` counts, by an Edgeworth expansion. */
function coverage(counts: readonly number[], total: number, width: number): number {
  const cells = counts.map((count) => truncatedPoisson(count, width));
  const sum = (pick: (cell: Moments) => number) => cells.reduce((s, cell) => s + pick(cell), 0);
  const variance = sum((cell) => cell.variance);
  const z = (total - sum((cell) => cell.mean)) / Math.sqrt(variance);
  const skew = sum((cell) => cell.third) / variance ** 1.5;
  const excess = sum((cell) => cell.fourth - 3 * cell.variance ** 2) / variance ** 2;
  const density = (edgeworth(z, skew, excess) * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI * variance);
  const inside = cells.reduce((product, cell) => product * cell.probability, 1);
  return (inside * density) / poisson(total, total);
}

function edgeworth(z: number, skew: number, excess: number): number {
  const third = z ** 3 - 3 * z;
  const fourth = z ** 4 - 6 * z ** 2 + 3;
  const sixth = z ** 6 - 15 * z ** 4 + 45 * z ** 2 - 15;
  return 1 + (skew * third) / 6 + (excess * fourth) / 24 + (skew ** 2 * sixth) / 72;
}

interface Moments {
  readonly probability: number;
  readonly mean: number;
  readonly variance: number;
  readonly third: number;
  readonly fourth: number;
}

/** Chance of a Poisson count within `width` of its mean, and its central moments given that. */
function truncatedPoisson(mean: number, width: number): Moments {
  const low = Math.max(0, mean - width);
  const values = Array.from({ length: mean + width - low + 1 }, (_, i) => low + i);
  const weights = values.map((value) => poisson(value, mean));
  const probability = weights.reduce((s, w) => s + w, 0);
  const expected = (f: (value: number) => number) =>
    values.reduce((s, value, i) => s + f(value) * (weights[i] as number), 0) / probability;
  const centre = expected((value) => value);
  const moment = (power: number) => expected((value) => (value - centre) ** power);
  return { probability, mean: centre, variance: moment(2), third: moment(3), fourth: moment(4) };
}

function poisson(count: number, mean: number): number {
  if (mean === 0) return count === 0 ? 1 : 0;
  return Math.exp(count * Math.log(mean) - mean - logGamma(count + 1));
}
