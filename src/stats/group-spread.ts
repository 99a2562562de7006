import { logGamma } from './beta.ts';
import { betaBinomialPmf } from './beta-binomial.ts';
import { StatsInputError } from './errors.ts';
import { requireCounts } from './require-counts.ts';
import type { Tally } from './tally.ts';

/** What is believed of how much groups differ before any was seen: log-normal on alpha + beta of their Beta. */
export interface SizeBelief {
  readonly median: number;
  /** Standard deviation of the natural logarithm. */
  readonly spread: number;
}

/** The Beta distributions groups may come from, each with its chance. */
export interface GroupSpread {
  /** alpha + beta of each distribution. */
  readonly sizes: Float64Array;
  /** Its mean, with half a success and half a failure added. */
  readonly means: Float64Array;
  /** Variance of that mean as an estimate. */
  readonly variances: Float64Array;
  /** Its chance; they sum to 1. */
  readonly weights: Float64Array;
}

/** 4 to 1024 by factors of four: under 4 groups are nearly all or nothing, above 1024 alike for any count here. */
const SIZES = Float64Array.from({ length: 5 }, (_, i) => 4 ** (i + 1));

/**
 * How much groups differ in a share, averaged over a grid instead of fixed at one estimate: with few groups the
 * likelihood of one size of spread is hardly better than that of another. The mean of each size is the weighted mean of
 * the groups, and its uncertainty is integrated over (restricted likelihood).
 *
 * @param tallies - groups without a trial are ignored; none at all leaves the belief, about one half
 * @throws StatsInputError when a tally is impossible or the belief is not positive
 * @see Skellam 1948, Journal of the Royal Statistical Society B 10:257, the beta-binomial; Patterson and Thompson 1971,
 * Biometrika 58:545, restricted likelihood
 */
export function groupSpread(tallies: readonly Tally[], belief: SizeBelief): GroupSpread {
  if (!(belief.median > 0 && belief.spread > 0)) throw new StatsInputError('a belief requires a positive size');
  for (const { successes, trials } of tallies) requireCounts(successes, trials);
  const groups = tallies.filter(({ trials }) => trials > 0);
  const fits = Array.from(SIZES, (size) => fitAt(groups, size));
  const logs = fits.map(
    ({ log }, i) => log - (Math.log((SIZES[i] as number) / belief.median) / belief.spread) ** 2 / 2,
  );
  const top = Math.max(...logs);
  const total = logs.reduce((sum, log) => sum + Math.exp(log - top), 0);
  return {
    sizes: SIZES,
    means: Float64Array.from(fits, ({ mean }) => mean),
    variances: Float64Array.from(fits, ({ variance }) => variance),
    weights: Float64Array.from(logs, (log) => Math.exp(log - top) / total),
  };
}

/** The mean of groups of one size of spread, its variance, and the logarithm of the restricted likelihood. */
function fitAt(groups: readonly Tally[], size: number) {
  let [weight, sum] = [0, 0];
  for (const { successes, trials } of groups) {
    const say = (size + 1) / (size + trials);
    weight += say * trials;
    sum += say * successes;
  }
  const mean = (sum + 0.5) / (weight + 1);
  const variance = (mean * (1 - mean)) / (weight + 1);
  const log = groups.reduce((total, group) => total + logChance(group, mean, size), Math.log(variance) / 2);
  return { mean, variance, log };
}

function logChance({ successes, trials }: Tally, mean: number, size: number): number {
  const [alpha, beta] = [mean * size, (1 - mean) * size];
  const up = logGamma(alpha + successes) - logGamma(alpha) + logGamma(beta + trials - successes) - logGamma(beta);
  return up + logGamma(size) - logGamma(size + trials);
}

/** One more group, as counted. */
export interface OneMoreGroup extends Tally {
  /** Share of the spread of single trials that lies between its own clusters of trials, 0 to 1; 0 when absent. */
  readonly within?: number;
}

/** How far out a group is, both sides. */
export interface HowFarOut {
  /** Chance of a count at least this far from the mean if the group's own share were the groups' mean. */
  readonly fromMean: number;
  /** Chance that one more group of their kind shows a count at least this far out. */
  readonly oneMoreGroup: number;
}

/**
 * How far one more group is from the others: from their mean, which is itself an estimate, and from what groups of
 * their kind show. Beta-binomial tails, averaged over the spread. Whole counts.
 *
 * @throws StatsInputError when the tally is impossible
 */
export function howFarOut(spread: GroupSpread, group: OneMoreGroup): HowFarOut {
  requireCounts(group.successes, group.trials);
  return {
    fromMean: bothTails(spread, group, () => 0),
    oneMoreGroup: bothTails(spread, group, (size) => 1 / (size + 1)),
  };
}

/** Sizes less likely than this change no digit that is shown. */
const NEGLIGIBLE = 1e-4;

/** @param between - share of the spread of single trials that lies between groups, by size */
function bothTails(spread: GroupSpread, group: OneMoreGroup, between: (size: number) => number): number {
  let [below, above] = [0, 0];
  spread.weights.forEach((weight, i) => {
    if (weight < NEGLIGIBLE) return;
    const mean = spread.means[i] as number;
    const unsure = (spread.variances[i] as number) / (mean * (1 - mean));
    const alike = Math.min(MOST_ALIKE, between(spread.sizes[i] as number) + unsure + (group.within ?? 0));
    const tails = tailsOf(group, mean, alike > 0 ? 1 / alike - 1 : Number.POSITIVE_INFINITY);
    below += weight * tails.below;
    above += weight * tails.above;
  });
  return Math.min(1, 2 * Math.min(below, above));
}

/** Above this trials are as good as all alike. */
const MOST_ALIKE = 0.99;

function tailsOf({ successes, trials }: OneMoreGroup, mean: number, concentration: number) {
  const pmf = betaBinomialPmf({ trials, mean, concentration });
  let below = 0;
  let above = 0;
  for (let k = 0; k < pmf.length; k++) {
    if (k <= successes) below += pmf[k] as number;
    if (k >= successes) above += pmf[k] as number;
  }
  return { below, above };
}

/** The mean share of the groups, averaged over the spread. */
export function spreadMean({ weights, means }: GroupSpread): number {
  return weights.reduce((sum, weight, i) => sum + weight * (means[i] as number), 0);
}
