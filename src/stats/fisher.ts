import { logGamma } from './beta.ts';
import { type ContingencyTable, marginsOf, withoutEmpty } from './contingency-table.ts';
import { StatsInputError } from './errors.ts';
import { exactTableP, exactTableWork } from './exact-table.ts';
import { permutationTest } from './permutation.ts';
import { requireWhole } from './require-counts.ts';

/** P-values of Fisher's exact test in a 2 x 2 table. */
export interface FisherTwoByTwo {
  /** Sum over all tables no more likely than the observed one. */
  readonly twoSided: number;
  /** P(first cell as large): the first row leans to the first column. */
  readonly greater: number;
  /** P(first cell as small). */
  readonly less: number;
}

/**
 * Fisher's exact test of independence in a 2 x 2 table.
 *
 * @param table - two rows of two whole counts
 * @returns all 1 when a row or column is empty
 * @throws StatsInputError when the table is not 2 x 2 or a count is not whole
 * @see Fisher 1935, The Design of Experiments, chapter II
 * @example fisherTwoByTwo([[3, 1], [1, 3]]).twoSided // 34/70
 */
export function fisherTwoByTwo(table: ContingencyTable): FisherTwoByTwo {
  const { rows, columns, total } = marginsOf(table);
  requireWholeTable(table);
  if (rows.length !== 2 || columns.length !== 2)
    throw new StatsInputError('fisherTwoByTwo requires two rows and two columns');
  const [row, column] = [rows[0] as number, columns[0] as number];
  const observed = table[0]?.[0] as number;
  const log = logHypergeometric({ row, column, total });
  const limit = log(observed) + SLACK;
  const sums = { all: 0, twoSided: 0, greater: 0, less: 0 };
  for (let x = Math.max(0, row + column - total); x <= Math.min(row, column); x += 1) {
    const p = Math.exp(log(x));
    sums.all += p;
    if (log(x) <= limit) sums.twoSided += p;
    if (x >= observed) sums.greater += p;
    if (x <= observed) sums.less += p;
  }
  const { all, twoSided, greater, less } = sums;
  return { twoSided: twoSided / all, greater: greater / all, less: less / all };
}

/** Tables this close in probability count as equally likely (relative; R uses the same). */
const SLACK = 1e-7;

function logHypergeometric({
  row,
  column,
  total,
}: {
  row: number;
  column: number;
  total: number;
}): (x: number) => number {
  const f = (n: number) => logGamma(n + 1);
  const fixed = f(row) + f(total - row) + f(column) + f(total - column) - f(total);
  return (x) => fixed - f(x) - f(row - x) - f(column - x) - f(total - row - column + x);
}

function requireWholeTable(table: ContingencyTable): void {
  for (const count of table.flat()) requireWhole(count, 'a table count');
}

/** P-value of Fisher's exact test in a table of any size. */
export interface FisherResult {
  readonly p: number;
  /** Every table was counted, or a seeded sample of them was drawn. */
  readonly method: 'exact' | 'monte-carlo';
}

/** A table to test, with what is needed should it be too large to count. */
export interface FisherTask {
  readonly table: ContingencyTable;
  readonly seed: number | string;
  /** Tables to draw when there are too many to count; 9999 when absent. */
  readonly draws?: number | undefined;
}

/**
 * Fisher's exact test of independence in a table of any size: the probability of all tables with the same margins no
 * more likely than the observed one. Counted in full where that is quick, else estimated from seeded draws.
 *
 * @returns p 1 when fewer than two rows or columns hold counts
 * @throws StatsInputError when the table is no table or a count is not whole
 * @see Freeman and Halton 1951, Biometrika 38:141
 */
export function fisherExact({ table, seed, draws = 9999 }: FisherTask): FisherResult {
  requireWholeTable(table);
  const used = withoutEmpty(table);
  if (used.length < 2 || (used[0]?.length ?? 0) < 2) return { p: 1, method: 'exact' };
  if (exactTableWork(used) <= MOST_WORK) return { p: exactTableP(used, SLACK), method: 'exact' };
  const drawn = permutationTest({ table: used, statistic: rareness, permutations: draws, seed });
  return { p: drawn?.p ?? 1, method: 'monte-carlo' };
}

const MOST_WORK = 20_000_000; // judgement: about a second of counting

/** Larger for tables less likely at fixed margins. */
function rareness(cells: Float64Array): number {
  let sum = 0;
  for (const count of cells) sum += logGamma(count + 1);
  return sum;
}
