import { logGamma } from './beta.ts';
import { type ContingencyTable, withoutEmpty } from './contingency-table.ts';
import { exactTableP, exactTableWork } from './exact-table.ts';
import { permutationTest } from './permutation.ts';
import { requireWhole } from './require-counts.ts';

/** Tables this close in probability count as equally likely (relative; R uses the same). */
const SLACK = 1e-7;

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
 * @throws StatsInputError when the table is not a table or a count is not whole
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

const MOST_WORK = 20_000_000; // judgment: about a second of counting

/** Larger for tables less likely at fixed margins. */
function rareness(cells: Float64Array): number {
  let sum = 0;
  for (const count of cells) sum += logGamma(count + 1);
  return sum;
}
