import { StatsInputError } from './errors.ts';
import { requireNonNegative } from './require-counts.ts';

/** Counts of two classifications crossed: one array per row category, one entry per column category. */
export type ContingencyTable = readonly (readonly number[])[];

/** The sums of a table. */
export interface Margins {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  readonly total: number;
}

/**
 * Row sums, column sums and total of a table.
 *
 * @throws StatsInputError when the rows differ in length or a count is negative, infinite or undefined
 */
export function marginsOf(table: ContingencyTable): Margins {
  const width = table[0]?.length ?? 0;
  const columns = new Array<number>(width).fill(0);
  const rows = table.map((row) => {
    if (row.length !== width) throw new StatsInputError('a table requires rows of equal length');
    return row.reduce((sum, count, j) => {
      requireNonNegative(count, 'a table count');
      columns[j] = (columns[j] as number) + count;
      return sum + count;
    }, 0);
  });
  return { rows, columns, total: rows.reduce((sum, count) => sum + count, 0) };
}

/**
 * The table without its empty rows and columns.
 *
 * @throws StatsInputError when the table is not a table
 */
export function withoutEmpty(table: ContingencyTable): number[][] {
  const { rows, columns } = marginsOf(table);
  return table.filter((_, i) => rows[i] !== 0).map((row) => row.filter((_, j) => columns[j] !== 0));
}

/** The table with rows and columns exchanged. */
export function transposed(table: ContingencyTable): number[][] {
  return (table[0] ?? []).map((_, j) => table.map((row) => row[j] as number));
}
