import { StatsInputError } from './errors.ts';
import { requireNonNegative } from './require-counts.ts';

/** One situation seen at ever finer levels. */
export interface ChainTask {
  /** Per level, coarse to fine, the counts of each category there. */
  readonly counts: readonly ArrayLike<number>[];
  /** Per level, how many counts its parent's shares are worth; at least 0. */
  readonly strengths: readonly number[];
  /** Shares before any count, summing to 1. */
  readonly root: ArrayLike<number>;
}

/**
 * Shares of each level of a back-off chain: its own counts mixed with its parent's shares,
 * (counts + strength x parent) / (total + strength).
 *
 * @returns one array of shares per level, each summing to 1; a level with neither counts nor strength keeps its parent's
 * @throws StatsInputError when lengths do not agree or a number is negative or not finite
 * @see MacKay and Bauman Peto 1995, Natural Language Engineering 1:289, hierarchical Dirichlet
 */
export function chainFixed({ counts, strengths, root }: ChainTask): number[][] {
  if (strengths.length !== counts.length) {
    throw new StatsInputError(`a chain requires one strength per level, got ${strengths.length} for ${counts.length}`);
  }
  requireAll(root, 'a root share');
  let parent = Array.from(root);
  return counts.map((level, k) => {
    parent = mixed(level, parent, strengths[k] as number);
    return parent;
  });
}

function mixed(counts: ArrayLike<number>, parent: readonly number[], strength: number): number[] {
  if (counts.length !== parent.length) {
    throw new StatsInputError(
      `a chain requires the same categories at every level, got ${counts.length} and ${parent.length}`,
    );
  }
  requireAll(counts, 'a chain count');
  requireNonNegative(strength, 'a strength');
  const total = Array.from(counts).reduce((sum, count) => sum + count, 0);
  if (total + strength === 0) return [...parent];
  return parent.map((share, j) => ((counts[j] as number) + strength * share) / (total + strength));
}

function requireAll(numbers: ArrayLike<number>, what: string): void {
  for (const value of Array.from(numbers)) requireNonNegative(value, what);
}

/** The same chain for a single share. */
export interface BinomialChainTask {
  /** Successes per level, coarse to fine. */
  readonly successes: readonly number[];
  /** Trials per level. */
  readonly trials: readonly number[];
  /** Per level, how many trials its parent's share is worth; at least 0. */
  readonly strengths: readonly number[];
  /** Share before any trial, 0 to 1. */
  readonly root: number;
}

/**
 * The share of success at each level of a back-off chain.
 *
 * @throws StatsInputError when lengths do not agree or a number is out of its range
 * @see {@link chainFixed}
 */
export function chainFixedBinomial({ successes, trials, strengths, root }: BinomialChainTask): number[] {
  if (trials.length !== successes.length) {
    throw new StatsInputError(`a chain requires trials for every level, got ${trials.length} for ${successes.length}`);
  }
  const counts = successes.map((x, k) => [x, (trials[k] as number) - x]);
  return chainFixed({ counts, strengths, root: [root, 1 - root] }).map(([share]) => share as number);
}
