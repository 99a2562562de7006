import { type ContingencyTable, marginsOf } from './contingency-table.ts';
import { StatsInputError } from './errors.ts';
import { randomState } from './random-state.ts';
import { requireCounts, requireWhole } from './require-counts.ts';
import { shuffleAt } from './shuffle.ts';

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
  /** Large values speak against independence; given the cells of a table with these margins, row after row. */
  readonly statistic: (cells: Float64Array) => number;
  /** 1999 when absent. */
  readonly permutations?: number | undefined;
  readonly seed: number | string;
}

/**
 * Permutation test of independence in a table.
 *
 * @returns null when the table is empty
 * @throws StatsInputError when the table holds fractions or is not a table, or there is no permutation to make
 * @see Phipson and Smyth 2010, Statistical Applications in Genetics and Molecular Biology 9:39
 */
export function permutationTest(task: PermutationTask): PermutationResult | null {
  const { table, statistic, permutations = 1999, seed } = task;
  requireWhole(permutations, 'permutations');
  if (permutations === 0) throw new StatsInputError('a permutation test requires at least one permutation, got 0');
  const { rows, columns, total } = marginsOf(table);
  for (const count of table.flat()) requireWhole(count, 'a table count');
  if (total === 0) return null;
  const state = randomState(seed);
  const [rowOf, columnOf] = [labels(rows, columns.length), labels(columns, 1)];
  const places = Int32Array.from(rowOf, (_, i) => i);
  const cells = Float64Array.from(table.flat());
  const observed = statistic(cells);
  let [hits, sum] = [0, 0];
  for (let k = 0; k < permutations; k += 1) {
    shuffleAt(state, columnOf, places);
    cross(rowOf, columnOf, cells);
    const value = statistic(cells);
    sum += value;
    if (value >= observed - TIE_SLACK) hits += 1;
  }
  return { observed, nullMean: sum / permutations, p: permutationP(hits, permutations), permutations };
}

const TIE_SLACK = 1e-10; // values this close are the same table in another order of addition

/** Each category as often as it was counted, as its number times a step. */
function labels(counts: readonly number[], step: number): Int32Array {
  return Int32Array.from(counts.flatMap((count, category) => new Array<number>(count).fill(category * step)));
}

/** Counts the pairs of labels into the cells. */
function cross(rowOf: Int32Array, columnOf: Int32Array, cells: Float64Array): void {
  cells.fill(0);
  for (let i = 0; i < rowOf.length; i += 1) {
    const cell = (rowOf[i] as number) + (columnOf[i] as number);
    cells[cell] = (cells[cell] as number) + 1;
  }
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
