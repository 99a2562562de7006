import { StatsInputError } from './errors.ts';
import type { Interval } from './interval.ts';
import { wilsonInterval } from './proportion-interval.ts';
import { requireNonNegative } from './require-counts.ts';

/** A share of weighted observations. */
export interface WeightedShare extends Interval {
  /** Weighted share, 0 to 1; null when no weight was given. */
  readonly estimate: number | null;
  /** Kish effective number of observations: never above the plain number, 0 without weight. */
  readonly effectiveTrials: number;
}

/**
 * The weighted share of successes, with a Wilson interval as wide as the effective number of observations allows.
 *
 * @param weights - one number of at least 0 per observation; only their ratios matter
 * @param successes - whether each observation was a success
 * @param level - confidence level, strictly between 0 and 1
 * @throws StatsInputError when the lengths differ, a weight is impossible or the level is out of range
 * @see Kish 1965, Survey Sampling: effective n = (sum of weights)² / sum of squared weights
 * @example weightedShare([2, 2, 1, 1, 1, 1], [true, false, true, false, false, true]).effectiveTrials // 5.3333
 */
export function weightedShare(weights: readonly number[], successes: readonly boolean[], level = 0.95): WeightedShare {
  requireSameLength(weights, successes);
  const { total, squares, hits } = weightSums(weights, successes);
  const effectiveTrials = total === 0 ? 0 : (total * total) / squares;
  const estimate = total === 0 ? null : Math.min(1, hits / total);
  const { low, high } = wilsonInterval((estimate ?? 0) * effectiveTrials, effectiveTrials, level);
  return { estimate, effectiveTrials, low, high };
}

function requireSameLength(weights: readonly number[], successes: readonly boolean[]): void {
  if (weights.length !== successes.length) {
    throw new StatsInputError(
      `weightedShare requires one weight per observation, got ${weights.length} for ${successes.length}`,
    );
  }
}

function weightSums(weights: readonly number[], successes: readonly boolean[]) {
  let [total, squares, hits] = [0, 0, 0];
  weights.forEach((weight, i) => {
    requireNonNegative(weight, 'a weight');
    total += weight;
    squares += weight * weight;
    if (successes[i]) hits += weight;
  });
  return { total, squares, hits };
}
