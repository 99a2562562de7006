import { betaQuantile } from './beta.ts';
import type { Interval } from './interval.ts';
import { normalWidth } from './normal.ts';
import { requireCounts } from './require-counts.ts';

const NO_TRIALS: Interval = { low: 0, high: 1 };

/**
 * Wilson score interval for a share.
 *
 * @param successes - 0 or more, at most `trials`; fractions allowed for effective counts
 * @param trials - 0 or more; none gives [0, 1]
 * @param level - confidence level, strictly between 0 and 1
 * @returns an interval within [0, 1] that holds successes / trials; its low end is exactly 0 at no success, its high end
 * exactly 1 at no failure
 * @throws StatsInputError when the counts are impossible or the level is out of range
 * @see Wilson 1927; Newcombe 1998, Statistics in Medicine 17:857, method 3
 * @example wilsonInterval(81, 263) // low 0.2552885, high 0.3662096
 */
export function wilsonInterval(successes: number, trials: number, level = 0.95): Interval {
  requireCounts(successes, trials);
  const z = normalWidth(level);
  if (trials === 0) return NO_TRIALS;
  return withExactEnds(wilsonLimits(successes / trials, trials, z), successes, trials);
}

function wilsonLimits(estimate: number, trials: number, z: number): Interval {
  const scale = 1 + (z * z) / trials;
  const center = (estimate + (z * z) / (2 * trials)) / scale;
  const spread = (z / scale) * Math.sqrt((estimate * (1 - estimate)) / trials + (z * z) / (4 * trials * trials));
  return { low: center - spread, high: center + spread };
}

function withExactEnds(limits: Interval, successes: number, trials: number): Interval {
  const low = successes === 0 ? 0 : Math.max(0, limits.low);
  const high = successes === trials ? 1 : Math.min(1, limits.high);
  return { low, high };
}

/**
 * Jeffreys interval: quantiles of the posterior under the Beta(1/2, 1/2) prior.
 *
 * @param successes - at most `trials`
 * @param trials - none gives [0, 1]
 * @param level - confidence level, strictly between 0 and 1
 * @returns an interval with a low end of exactly 0 at no success and a high end of exactly 1 at no failure
 * @throws StatsInputError when the counts are impossible or the level is out of range
 * @see Brown, Cai and DasGupta 2001, Statistical Science 16:101
 * @example jeffreysInterval(8, 10) // low 0.4972255, high 0.9559406
 */
export function jeffreysInterval(successes: number, trials: number, level = 0.95): Interval {
  requireCounts(successes, trials);
  const tail = tailOf(level);
  if (trials === 0) return NO_TRIALS;
  const a = successes + 0.5;
  const b = trials - successes + 0.5;
  return withExactEnds({ low: betaQuantile(tail, a, b), high: betaQuantile(1 - tail, a, b) }, successes, trials);
}

/**
 * Clopper-Pearson interval: coverage is never below `level`, at the price of width.
 *
 * @param successes - at most `trials`
 * @param trials - none gives [0, 1]
 * @param level - confidence level, strictly between 0 and 1
 * @throws StatsInputError when the counts are impossible or the level is out of range
 * @see Clopper and Pearson 1934, Biometrika 26:404
 * @example clopperPearsonInterval(81, 263) // low 0.2527367, high 0.3676219
 */
export function clopperPearsonInterval(successes: number, trials: number, level = 0.95): Interval {
  requireCounts(successes, trials);
  const tail = tailOf(level);
  const failures = trials - successes;
  const low = successes === 0 ? 0 : betaQuantile(tail, successes, failures + 1);
  const high = failures === 0 ? 1 : betaQuantile(1 - tail, successes + 1, failures);
  return { low, high };
}

function tailOf(level: number): number {
  normalWidth(level);
  return (1 - level) / 2;
}
