import { StatsInputError } from './errors.ts';
import { permutationP } from './permutation.ts';
import { createRandom } from './random.ts';

/** Whether an outcome goes with each of several groupings, beyond what the strata explain. */
export interface StratifiedTask {
  /** 1 where the outcome happened, 0 where not. */
  readonly outcome: ArrayLike<number>;
  /** Stratum of each observation, from 0; outcomes are only shuffled within one. */
  readonly strata: ArrayLike<number>;
  /** For each grouping the group of every observation, from 0; -1 where it has none. */
  readonly groupings: readonly ArrayLike<number>[];
  /** 1999 when absent. */
  readonly permutations?: number | undefined;
  readonly seed: number | string;
}

/** What one grouping shows. */
export interface StratifiedAssociation {
  /** Sum over groups of squared excess over its variance; 0 when every group is as its strata say. */
  readonly statistic: number;
  /** Mean of it over the shuffles. */
  readonly nullMean: number;
  /** Share of shuffles at least as large, the observed order counted in. */
  readonly p: number;
  /** By group: outcomes that its strata alone would give. */
  readonly expected: readonly number[];
}

/**
 * Permutation test of each grouping against the outcome, the outcomes shuffled within strata. All groupings are read
 * off the same shuffles.
 *
 * @throws StatsInputError when lengths differ
 * @see Phipson and Smyth 2010, Statistical Applications in Genetics and Molecular Biology 9:39 for p; the statistic is
 * that of Mantel and Haenszel 1959, Journal of the National Cancer Institute 22:719, without the covariances
 */
export function stratifiedAssociation(task: StratifiedTask): StratifiedAssociation[] {
  const { permutations = 1999, seed, groupings } = task;
  requireLengths(task);
  const blocks = blocksOf(task.strata);
  const nulls = groupings.map((groups) => expectation(task.outcome, blocks, groups));
  const random = createRandom(seed);
  const shuffled = Uint8Array.from(task.outcome);
  const observed = groupings.map((groups, g) => excess(shuffled, groups, nulls[g] as Expectation));
  const [hits, sums] = [groupings.map(() => 0), groupings.map(() => 0)];
  for (let k = 0; k < permutations; k++) {
    for (const block of blocks) shuffleBlock(shuffled, block, random.integer);
    groupings.forEach((groups, g) => {
      const value = excess(shuffled, groups, nulls[g] as Expectation);
      sums[g] = (sums[g] as number) + value;
      if (value >= (observed[g] as number) - TIE_SLACK) hits[g] = (hits[g] as number) + 1;
    });
  }
  return groupings.map((_, g) => ({
    statistic: observed[g] as number,
    nullMean: (sums[g] as number) / permutations,
    p: permutationP(hits[g] as number, permutations),
    expected: [...(nulls[g] as Expectation).mean],
  }));
}

const TIE_SLACK = 1e-9; // values this close are the same counts in another order of addition

/** By group: outcomes expected from the strata, and their variance. */
interface Expectation {
  readonly mean: Float64Array;
  readonly variance: Float64Array;
}

function requireLengths({ outcome, strata, groupings }: StratifiedTask): void {
  if ([strata, ...groupings].some(({ length }) => length !== outcome.length)) {
    throw new StatsInputError('an association requires a stratum and a group for every outcome');
  }
}

function blocksOf(strata: ArrayLike<number>): number[][] {
  const blocks = new Map<number, number[]>();
  for (let i = 0; i < strata.length; i++) {
    const block = blocks.get(strata[i] as number);
    if (block) block.push(i);
    else blocks.set(strata[i] as number, [i]);
  }
  return [...blocks.values()];
}

function expectation(
  outcome: ArrayLike<number>,
  blocks: readonly (readonly number[])[],
  groups: ArrayLike<number>,
): Expectation {
  let most = -1;
  for (let i = 0; i < groups.length; i++) most = Math.max(most, groups[i] as number);
  const [mean, variance] = [new Float64Array(most + 1), new Float64Array(most + 1)];
  for (const block of blocks) {
    const rate = block.reduce((sum, i) => sum + (outcome[i] as number), 0) / block.length;
    for (const i of block) {
      const group = groups[i] as number;
      if (group < 0) continue;
      mean[group] = (mean[group] as number) + rate;
      variance[group] = (variance[group] as number) + rate * (1 - rate);
    }
  }
  return { mean, variance };
}

function excess(outcome: Uint8Array, groups: ArrayLike<number>, { mean, variance }: Expectation): number {
  const counts = new Float64Array(mean.length);
  for (let i = 0; i < outcome.length; i++) {
    const group = groups[i] as number;
    if (group >= 0) counts[group] = (counts[group] as number) + (outcome[i] as number);
  }
  let total = 0;
  for (let v = 0; v < counts.length; v++) {
    const spread = variance[v] as number;
    if (spread > 0) total += ((counts[v] as number) - (mean[v] as number)) ** 2 / spread;
  }
  return total;
}

/** Shuffles the outcomes of one stratum among its observations (Fisher and Yates). */
function shuffleBlock(outcome: Uint8Array, block: readonly number[], integer: (below: number) => number): void {
  for (let i = block.length - 1; i > 0; i--) {
    const [a, b] = [block[i] as number, block[integer(i + 1)] as number];
    const kept = outcome[a] as number;
    outcome[a] = outcome[b] as number;
    outcome[b] = kept;
  }
}
