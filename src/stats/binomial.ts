import { betaCdf, logGamma } from './beta.ts';
import { StatsInputError } from './errors.ts';
import { requireCounts, requireWhole } from './require-counts.ts';

/**
 * Probability of `x` or more successes in `n` trials.
 *
 * @param x - whole number, at most `n`
 * @param n - whole number
 * @param p - chance of success in each trial, 0 to 1
 * @throws StatsInputError when an argument is out of its range
 */
export function binomialUpperTail(x: number, n: number, p: number): number {
  requireTrials(x, n, p);
  if (x === 0) return 1;
  return betaCdf(p, x, n - x + 1);
}

/**
 * Two-sided exact binomial test: the probability of all outcomes no more likely than `x`.
 *
 * @param x - whole number, at most `n`
 * @param n - whole number; none gives 1
 * @param p - chance of success in each trial, 0 to 1
 * @throws StatsInputError when an argument is out of its range
 * @see Clopper and Pearson 1934 for the tails; outcomes are ordered by probability as in R's binom.test
 */
export function binomialTwoSided(x: number, n: number, p: number): number {
  requireTrials(x, n, p);
  const limit = binomialProbability(x, n, p) * RELATIVE_SLACK;
  let total = 0;
  for (let k = 0; k <= n; k += 1) {
    const probability = binomialProbability(k, n, p);
    if (probability <= limit) total += probability;
  }
  return Math.min(1, total);
}

/** Outcomes this close in probability count as equally likely, so that rounding does not split ties (R uses the same). */
const RELATIVE_SLACK = 1 + 1e-7;

/**
 * Probability of exactly `x` successes in `n` trials.
 *
 * @param x - whole number, at most `n`
 * @param n - whole number
 * @param p - chance of success in each trial, 0 to 1
 * @throws StatsInputError when an argument is out of its range
 */
export function binomialProbability(x: number, n: number, p: number): number {
  requireTrials(x, n, p);
  if (p === 0) return x === 0 ? 1 : 0;
  if (p === 1) return x === n ? 1 : 0;
  return Math.exp(logChoose(n, x) + x * Math.log(p) + (n - x) * Math.log1p(-p));
}

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

function requireTrials(x: number, n: number, p: number): void {
  requireWhole(x, 'successes');
  requireWhole(n, 'trials');
  requireCounts(x, n);
  if (!(p >= 0 && p <= 1)) throw new StatsInputError(`a chance of success must lie between 0 and 1, got ${p}`);
}
