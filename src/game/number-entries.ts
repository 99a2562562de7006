import { type ColumnName, FILM_COLUMNS } from './columns.ts';

/**
 * The numbers of a column, NaN where it was not charted. Whole numbers below 2 ** 24 and NaN lose nothing in 32 bits, in
 * half the room.
 *
 * @see IEEE 754-2019, table 3.5: binary32 has a precision of 24 bits
 */
export type NumberEntries = Float64Array | Float32Array;

/** Columns with decimals: two of them do not fit into 32 bits exactly. */
const WITH_DECIMALS: ReadonlySet<ColumnName> = new Set(
  FILM_COLUMNS.flatMap(({ name, cell }) => (cell.form === 'number' && cell.decimals > 0 ? [name] : [])),
);

/** `size` zeros to be overwritten with what a sheet's column holds, as narrow as any of its values allows. */
export function createNumbers(name: ColumnName, size: number): NumberEntries {
  return WITH_DECIMALS.has(name) ? new Float64Array(size) : new Float32Array(size);
}

/** Entries of the kind that loses nothing of any of these. */
export function widestOf(all: readonly NumberEntries[]): NumberEntries {
  return all.find((entries) => entries instanceof Float64Array) ?? all[0] ?? new Float64Array(0);
}

/** `size` zeros that hold whatever `entries` hold. */
export function numbersLike(entries: NumberEntries, size: number): NumberEntries {
  return entries instanceof Float32Array ? new Float32Array(size) : new Float64Array(size);
}
