import { betaQuantile } from './beta.ts';
import { dirichletMoments, fitDirichlet } from './dirichlet-prior.ts';
import { StatsInputError } from './errors.ts';
import type { Interval } from './interval.ts';
import { normalWidth } from './normal.ts';
import { requireCounts, requireWhole } from './require-counts.ts';

/** Successes out of trials in one group. */
export interface Tally {
  readonly successes: number;
  readonly trials: number;
}

/** The shapes of a Beta distribution of shares. */
export interface BetaShapes {
  readonly alpha: number;
  readonly beta: number;
}

/** A Beta distribution of shares fitted to many groups. */
export interface BetaFit extends BetaShapes {
  /** Log likelihood of all tallies, binomial coefficients included. */
  readonly logLikelihood: number;
  /** The groups differ no more than chance: the fit ran to the cap on alpha + beta. */
  readonly completePooling: boolean;
}

/**
 * The Beta distribution under which the tallies of many groups are most likely. When all trials went one way none is;
 * the answer is then the pooled share with half a success and half a failure added, at the cap.
 *
 * @param tallies - whole counts; groups without a trial are ignored
 * @param cap - largest alpha + beta considered; 2000 when absent
 * @throws StatsInputError when a tally is impossible or there is no trial
 * @see Skellam 1948, Journal of the Royal Statistical Society B 10:257
 */
export function fitBeta(tallies: readonly Tally[], cap?: number): BetaFit {
  const { alpha, logLikelihood, completePooling } = fitDirichlet(twoCategories(tallies), cap);
  return { alpha: alpha[0] as number, beta: alpha[1] as number, logLikelihood, completePooling };
}

function twoCategories(tallies: readonly Tally[]): number[][] {
  return tallies.map(({ successes, trials }) => {
    requireWhole(successes, 'successes');
    requireWhole(trials, 'trials');
    requireCounts(successes, trials);
    return [successes, trials - successes];
  });
}

/** A Beta distribution of shares, by its mean and its size. */
export interface BetaMoments {
  /** Share of the spread between single trials that lies between groups, 0 to 1. */
  readonly correlation: number;
  /** Share of successes over all trials. */
  readonly mean: number;
  /** alpha + beta; null (infinite) when the groups differ no more than chance. */
  readonly size: number | null;
}

/**
 * Moment estimate of how much groups differ, by the analysis of variance of single trials.
 *
 * @param tallies - whole counts; groups without a trial are ignored
 * @throws StatsInputError when a tally is impossible, or there are not two groups and more trials than groups
 * @see Weir and Hill 2002, Annual Review of Genetics 36:721
 */
export function betaMoments(tallies: readonly Tally[]): BetaMoments {
  const { correlation, shares, size } = dirichletMoments(twoCategories(tallies));
  return { correlation, mean: shares[0] as number, size };
}

/**
 * The Beta distribution with the mean and variance of the raw shares. It takes binomial noise for real spread, so it
 * shrinks far too little when groups are small: here to check a textbook, not to plan with.
 *
 * @param tallies - whole counts, at least two groups, each with a trial
 * @returns null when the raw shares do not vary, or vary more than any Beta can
 * @throws StatsInputError when a tally is impossible or empty, or there are fewer than two
 * @see Gelman et al., Bayesian Data Analysis, section 5.1
 */
export function naiveBetaMoments(tallies: readonly Tally[]): BetaShapes | null {
  twoCategories(tallies);
  if (tallies.length < 2 || tallies.some(({ trials }) => trials === 0)) {
    throw new StatsInputError('naiveBetaMoments requires two groups, each with a trial');
  }
  const shares = tallies.map(({ successes, trials }) => successes / trials);
  const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
  const variance = shares.reduce((sum, share) => sum + (share - mean) ** 2, 0) / (shares.length - 1);
  const size = (mean * (1 - mean)) / variance - 1;
  return size > 0 && Number.isFinite(size) ? { alpha: mean * size, beta: (1 - mean) * size } : null;
}

/** What is believed of one group's share after its tally. */
export interface BetaPosterior extends BetaShapes, Interval {
  readonly mean: number;
}

/** A prior, a tally and the level of the interval. */
export interface PosteriorTask extends BetaShapes, Tally {
  /** Strictly between 0 and 1; 0.95 when absent. */
  readonly level?: number | undefined;
}

/**
 * The share of one group under a Beta prior: posterior mean and central interval.
 *
 * @throws StatsInputError when the tally is impossible, a shape is not above 0 or the level is out of range
 * @example betaPosterior({ alpha: 1.4, beta: 8.6, successes: 4, trials: 14 }).mean // 0.225
 */
export function betaPosterior(task: PosteriorTask): BetaPosterior {
  const { successes, trials, level = 0.95 } = task;
  requireCounts(successes, trials);
  normalWidth(level);
  const alpha = task.alpha + successes;
  const beta = task.beta + trials - successes;
  const tail = (1 - level) / 2;
  return {
    alpha,
    beta,
    mean: alpha / (alpha + beta),
    low: betaQuantile(tail, alpha, beta),
    high: betaQuantile(1 - tail, alpha, beta),
  };
}
