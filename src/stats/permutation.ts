import { type ContingencyTable, marginsOf } from './contingency-table.ts';
import { StatsInputError } from './errors.ts';
import { createRandom } from './random.ts';
import { requireCounts, requireWhole } from './require-counts.ts';

/** What chance alone makes of a statistic, by shuffling one classification against the other. */
export interface PermutationResult {
  readonly observed: number;
  /** Mean of the statistic over the shuffles: what independence would give at these margins. */
  readonly nullMean: number;
  /** Share of shuffles at least as large as observed, with the observed table counted in; never 0. */
  readonly p: number;
  readonly permutations: number;
}

/** A permutation test to be run. */
export interface PermutationTask {
  /** Whole counts. */
  readonly table: ContingencyTable;
  /** Large values speak against independence. */
  readonly statistic: (table: ContingencyTable) => number;
  /** 1999 when absent. */
  readonly permutations?: number | undefined;
  readonly seed: number | string;
}

/**
 * Permutation test of independence in a table.
 *
 * @returns null when the table is empty
 * @throws StatsInputError when the table holds fractions or is no table, or there is no permutation to make
 * @see Phipson and Smyth 2010, Statistical Applications in Genetics and Molecular Biology 9:39
 */
export function permutationTest(task: PermutationTask): PermutationResult | null {
  const { table, statistic, permutations = 1999, seed } = task;
  requireWhole(permutations, 'permutations');
  if (permutations === 0) throw new StatsInputError('a permutation test requires at least one permutation, got 0');
  const { rows, columns, total } = marginsOf(table);
  for (const count of table.flat()) requireWhole(count, 'a table count');
  if (total === 0) return null;
  const { shuffle } = createRandom(seed);
  const [rowOf, columnOf] = [labels(rows), labels(columns)];
  const observed = statistic(table);
  let [hits, sum] = [0, 0];
  for (let k = 0; k < permutations; k += 1) {
    const value = statistic(crossed(rowOf, shuffle(columnOf), table));
    sum += value;
    if (value >= observed - TIE_SLACK) hits += 1;
  }
  return { observed, nullMean: sum / permutations, p: permutationP(hits, permutations), permutations };
}

const TIE_SLACK = 1e-10; // values this close are the same table in another order of addition

function labels(counts: readonly number[]): number[] {
  return counts.flatMap((count, category) => new Array<number>(count).fill(category));
}

function crossed(rowOf: readonly number[], columnOf: readonly number[], like: ContingencyTable): number[][] {
  const table = like.map((row) => new Array<number>(row.length).fill(0));
  rowOf.forEach((row, i) => {
    const cells = table[row] as number[];
    const column = columnOf[i] as number;
    cells[column] = (cells[column] as number) + 1;
  });
  return table;
}

/**
 * The p-value of a Monte Carlo test: the observed outcome counts as one of the draws, so it is never 0.
 *
 * @param hits - draws at least as extreme as observed
 * @param draws - draws made
 * @throws StatsInputError when the counts are impossible
 * @see Phipson and Smyth 2010
 */
export function permutationP(hits: number, draws: number): number {
  requireCounts(hits, draws);
  return (hits + 1) / (draws + 1);
}
