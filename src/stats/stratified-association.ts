import { StatsInputError } from './errors.ts';
import { permutationP } from './permutation.ts';
import { randomState } from './random-state.ts';
import { shuffleAt } from './shuffle.ts';

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
 * @throws StatsInputError when lengths differ or an outcome is neither 0 nor 1
 * @see Phipson and Smyth 2010, Statistical Applications in Genetics and Molecular Biology 9:39 for p; the statistic is
 * that of Mantel and Haenszel 1959, Journal of the National Cancer Institute 22:719, without the covariances
 */
export function stratifiedAssociation(task: StratifiedTask): StratifiedAssociation[] {
  const { permutations = 1999, seed } = task;
  requireLengths(task);
  const outcome = Int32Array.from(task.outcome);
  const blocks = blocksOf(task.strata);
  const groupings = task.groupings.map((groups) => groupingOf(groups, outcome, blocks));
  const state = randomState(seed);
  const hits = new Int32Array(groupings.length);
  const sums = new Float64Array(groupings.length);
  const happened = new Int32Array(outcome.reduce((sum, one) => sum + one, 0));
  placesOf(outcome, happened);
  const observed = groupings.map((grouping) => excess(happened, grouping));
  for (let k = 0; k < permutations; k++) {
    for (let b = 0; b < blocks.length; b++) shuffleAt(state, outcome, blocks[b] as Int32Array);
    placesOf(outcome, happened);
    for (let g = 0; g < groupings.length; g++) {
      const value = excess(happened, groupings[g] as Grouping);
      sums[g] = (sums[g] as number) + value;
      if (value >= (observed[g] as number) - TIE_SLACK) hits[g] = (hits[g] as number) + 1;
    }
  }
  return groupings.map(({ mean }, g) => ({
    statistic: observed[g] as number,
    nullMean: (sums[g] as number) / permutations,
    p: permutationP(hits[g] as number, permutations),
    expected: [...mean.subarray(0, -1)],
  }));
}

const TIE_SLACK = 1e-9; // values this close are the same counts in another order of addition

/** One grouping; observations without a group are in a last one that says nothing. */
interface Grouping {
  /** Group of every observation. */
  readonly of: Int32Array;
  /** By group: outcomes expected from the strata, and their variance. */
  readonly mean: Float64Array;
  readonly variance: Float64Array;
  /** Room for the outcomes counted by group. */
  readonly counts: Float64Array;
}

function requireLengths({ outcome, strata, groupings }: StratifiedTask): void {
  if ([strata, ...groupings].some(({ length }) => length !== outcome.length)) {
    throw new StatsInputError('an association requires a stratum and a group for every outcome');
  }
  for (let i = 0; i < outcome.length; i++) {
    if (outcome[i] !== 0 && outcome[i] !== 1) throw new StatsInputError(`an outcome is 0 or 1, got ${outcome[i]}`);
  }
}

/** The observations of each stratum. */
function blocksOf(strata: ArrayLike<number>): Int32Array[] {
  const blocks = new Map<number, number[]>();
  for (let i = 0; i < strata.length; i++) {
    const block = blocks.get(strata[i] as number);
    if (block) block.push(i);
    else blocks.set(strata[i] as number, [i]);
  }
  return Array.from(blocks.values(), (block) => Int32Array.from(block));
}

function groupingOf(groups: ArrayLike<number>, outcome: Int32Array, blocks: readonly Int32Array[]): Grouping {
  const none = Int32Array.from(groups).reduce((most, group) => Math.max(most, group + 1), 0);
  const of = Int32Array.from(groups, (group) => (group < 0 ? none : group));
  const [mean, variance] = [new Float64Array(none + 1), new Float64Array(none + 1)];
  for (const block of blocks) {
    const rate = block.reduce((sum, i) => sum + (outcome[i] as number), 0) / block.length;
    for (const i of block) {
      const group = of[i] as number;
      if (group === none) continue;
      mean[group] = (mean[group] as number) + rate;
      variance[group] = (variance[group] as number) + rate * (1 - rate);
    }
  }
  return { of, mean, variance, counts: new Float64Array(none + 1) };
}

/** Writes the places where the outcome happened. */
function placesOf(outcome: Int32Array, happened: Int32Array): void {
  for (let i = 0, found = 0; i < outcome.length; i++) {
    happened[found] = i;
    found += outcome[i] as number;
  }
}

function excess(happened: Int32Array, { of, mean, variance, counts }: Grouping): number {
  counts.fill(0);
  for (let i = 0; i < happened.length; i++) {
    const group = of[happened[i] as number] as number;
    counts[group] = (counts[group] as number) + 1;
  }
  let total = 0;
  for (let v = 0; v < counts.length; v++) {
    const spread = variance[v] as number;
    const beyond = (counts[v] as number) - (mean[v] as number);
    if (spread > 0) total += (beyond * beyond) / spread;
  }
  return total;
}
