import { StatsInputError } from './errors.ts';
import { requireCounts } from './require-counts.ts';
import type { Tally } from './shrinkage.ts';

/** Shares pulled towards their common mean. */
export interface JamesStein {
  /** Mean of the raw shares. */
  readonly mean: number;
  /** Part of each share's distance from the mean that is kept, 0 to 1. */
  readonly kept: number;
  readonly estimates: readonly number[];
}

/**
 * Positive-part James-Stein estimates of shares from groups of one size, with the binomial variance at the mean.
 *
 * @param tallies - at least four groups with the same number of trials
 * @throws StatsInputError when a tally is impossible, there are fewer than four, or their trials differ
 * @see Efron and Morris 1975, Journal of the American Statistical Association 70:311
 */
export function jamesStein(tallies: readonly Tally[]): JamesStein {
  const trials = commonTrials(tallies);
  const shares = tallies.map(({ successes }) => successes / trials);
  const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
  const spread = shares.reduce((sum, share) => sum + (share - mean) ** 2, 0);
  const noise = (mean * (1 - mean)) / trials;
  const kept = spread === 0 ? 0 : Math.max(0, 1 - ((shares.length - 3) * noise) / spread);
  return { mean, kept, estimates: shares.map((share) => mean + kept * (share - mean)) };
}

function commonTrials(tallies: readonly Tally[]): number {
  for (const { successes, trials } of tallies) requireCounts(successes, trials);
  const [first] = tallies;
  if (first === undefined || tallies.length < 4 || first.trials === 0) {
    throw new StatsInputError(`jamesStein requires at least four groups with trials, got ${tallies.length}`);
  }
  if (tallies.some(({ trials }) => trials !== first.trials)) {
    throw new StatsInputError('jamesStein requires the same number of trials in every group');
  }
  return first.trials;
}
