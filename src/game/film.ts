import { type ColumnName, FILM_COLUMNS } from './columns.ts';
import { FREE_WORD_COLUMNS, freeWordKey } from './free-word.ts';
import { type NumberEntries, numbersLike, widestOf } from './number-entries.ts';

/** A column of words: `codes[i]` points into `values`; code 0 is "not charted" and `values[0]` is the empty string. */
export interface CodeColumn {
  readonly kind: 'code';
  readonly codes: Uint16Array;
  readonly values: readonly string[];
}

/** A column of numbers in the unit its schema names; NaN is "not charted". */
export interface NumberColumn {
  readonly kind: 'number';
  readonly numbers: NumberEntries;
}

/** One column of a {@link Film}. */
export type FilmColumn = CodeColumn | NumberColumn;

/**
 * Validated snaps as columns of one length. A column nobody charted may be absent. `sourceOf[i]` and `rowOf[i]`
 * (1-based line in that file) say where snap `i` was read, so every number can be traced to its snaps.
 */
export interface Film {
  readonly size: number;
  readonly sources: readonly string[];
  readonly sourceOf: Uint16Array;
  readonly rowOf: Uint32Array;
  readonly columns: Readonly<Partial<Record<ColumnName, FilmColumn>>>;
}

/** A snap as plain values, by column; used by tests, templates and small live files. */
export type SnapRecord = Readonly<Partial<Record<ColumnName, string | number>>>;

/** The code of the word charted in `column` on snap `index`, 0 where it was not charted. */
export function codeAt(chart: Film, column: ColumnName, index: number): number {
  const found = chart.columns[column];
  return found?.kind === 'code' ? (found.codes[index] ?? 0) : 0;
}

/** Every snap of a film by its place in it. */
export function rowsOf({ size }: Film): number[] {
  return Array.from({ length: size }, (_, row) => row);
}

/** The word charted in `column` on snap `index`, or undefined where it was not charted. */
export function textAt(chart: Film, column: ColumnName, index: number): string | undefined {
  const found = chart.columns[column];
  if (found?.kind !== 'code') return undefined;
  const code = found.codes[index] ?? 0;
  return code === 0 ? undefined : found.values[code];
}

/** The number charted in `column` on snap `index`, or undefined where it was not charted. */
export function numberAt(chart: Film, column: ColumnName, index: number): number | undefined {
  const found = chart.columns[column];
  if (found?.kind !== 'number') return undefined;
  const value = found.numbers[index];
  return value === undefined || Number.isNaN(value) ? undefined : value;
}

/** On how many snaps of the chart the column was charted. */
export function chartedCount(chart: Film, column: ColumnName): number {
  const found = chart.columns[column];
  if (!found) return 0;
  let count = 0;
  for (let i = 0; i < chart.size; i++) {
    if (found.kind === 'code' ? found.codes[i] !== 0 : !Number.isNaN(found.numbers[i])) count++;
  }
  return count;
}

/** The chart cut to the given snaps, in the given order; `rows` are indices into the chart. */
export function selectSnaps(chart: Film, rows: ArrayLike<number>): Film {
  const columns: Partial<Record<ColumnName, FilmColumn>> = {};
  for (const [name, column] of Object.entries(chart.columns) as [ColumnName, FilmColumn][]) {
    columns[name] = pick(column, rows);
  }
  const sourceOf = pickInto(new Uint16Array(rows.length), { from: chart.sourceOf, rows, absent: 0 });
  const rowOf = pickInto(new Uint32Array(rows.length), { from: chart.rowOf, rows, absent: 0 });
  return { size: rows.length, sources: chart.sources, sourceOf, rowOf, columns };
}

/** The snaps for which `keep(index)` holds, as a chart; where it holds for all, the chart itself, not a second one. */
export function filterSnaps(chart: Film, keep: (index: number) => boolean): Film {
  const rows = new Uint32Array(chart.size);
  let kept = 0;
  for (let i = 0; i < chart.size; i++) if (keep(i)) rows[kept++] = i;
  return kept === chart.size ? chart : selectSnaps(chart, rows.subarray(0, kept));
}

/**
 * Several charts as one, in the given order; word lists are merged, absent columns become not charted. A single chart
 * keeps its entries, so that a long one is not in memory twice.
 */
export function joinFilms(charts: readonly Film[]): Film {
  const [only] = charts;
  if (only !== undefined && charts.length === 1) return { ...only, columns: inOurOrder(only.columns) };
  const size = charts.reduce((sum, chart) => sum + chart.size, 0);
  const sources = charts.flatMap((chart) => chart.sources);
  const sourceOf = new Uint16Array(size);
  const rowOf = new Uint32Array(size);
  let at = 0;
  let firstSource = 0;
  for (const chart of charts) {
    for (let i = 0; i < chart.size; i++) sourceOf[at + i] = firstSource + (chart.sourceOf[i] ?? 0);
    rowOf.set(chart.rowOf, at);
    at += chart.size;
    firstSource += chart.sources.length;
  }
  return { size, sources, sourceOf, rowOf, columns: joinColumns(charts, size) };
}

/** A chart from plain records that are already valid; `source` names where they came from. */
export function filmFromRecords(records: readonly SnapRecord[], source = 'records'): Film {
  const columns: Partial<Record<ColumnName, FilmColumn>> = {};
  for (const { name, kind } of FILM_COLUMNS) {
    const cells = records.map((record) => record[name]);
    if (cells.every((cell) => cell === undefined)) continue;
    columns[name] = kind === 'number' ? numbersOf(cells) : codesOf(cells);
  }
  return {
    size: records.length,
    sources: [source],
    sourceOf: new Uint16Array(records.length),
    rowOf: Uint32Array.from(records, (_, i) => i + 2),
    columns,
  };
}

function inOurOrder(columns: Film['columns']): Film['columns'] {
  return Object.fromEntries(FILM_COLUMNS.flatMap(({ name }) => (columns[name] ? [[name, columns[name]]] : [])));
}

function joinColumns(charts: readonly Film[], size: number): Film['columns'] {
  const columns: Partial<Record<ColumnName, FilmColumn>> = {};
  for (const { name, kind } of FILM_COLUMNS) {
    if (!charts.some((chart) => chart.columns[name])) continue;
    columns[name] = kind === 'number' ? joinNumbers(charts, name, size) : joinCodes(charts, name, size);
  }
  return columns;
}

function pick(column: FilmColumn, rows: ArrayLike<number>): FilmColumn {
  if (column.kind === 'number') {
    const numbers = pickInto(numbersLike(column.numbers, rows.length), {
      from: column.numbers,
      rows,
      absent: Number.NaN,
    });
    return { kind: 'number', numbers };
  }
  const codes = pickInto(new Uint16Array(rows.length), { from: column.codes, rows, absent: 0 });
  return { kind: 'code', codes, values: column.values };
}

/** By a plain loop: for long charts, an eighth of the time of building typed arrays from an iterated list. */
function pickInto<Numbers extends NumberEntries | Uint16Array | Uint32Array>(
  into: Numbers,
  { from, rows, absent }: { readonly from: Numbers; readonly rows: ArrayLike<number>; readonly absent: number },
): Numbers {
  for (let i = 0; i < into.length; i++) into[i] = from[rows[i] as number] ?? absent;
  return into;
}

function joinNumbers(charts: readonly Film[], name: ColumnName, size: number): NumberColumn {
  const parts = charts.flatMap(({ columns }) => (columns[name]?.kind === 'number' ? [columns[name].numbers] : []));
  const numbers = numbersLike(widestOf(parts), size).fill(Number.NaN);
  let at = 0;
  for (const chart of charts) {
    const column = chart.columns[name];
    if (column?.kind === 'number') numbers.set(column.numbers, at);
    at += chart.size;
  }
  return { kind: 'number', numbers };
}

function joinCodes(charts: readonly Film[], name: ColumnName, size: number): CodeColumn {
  const codes = new Uint16Array(size);
  const dictionary = createDictionary(FREE_WORD_COLUMNS.has(name) ? freeWordKey : undefined);
  let at = 0;
  for (const chart of charts) {
    const column = chart.columns[name];
    if (column?.kind === 'code') {
      const renumbered = column.values.map((value) => dictionary.codeOf(value));
      for (let i = 0; i < chart.size; i++) codes[at + i] = renumbered[column.codes[i] ?? 0] ?? 0;
    }
    at += chart.size;
  }
  return { kind: 'code', codes, values: dictionary.values };
}

function numbersOf(cells: readonly (string | number | undefined)[]): NumberColumn {
  return {
    kind: 'number',
    numbers: Float64Array.from(cells, (cell) => (typeof cell === 'number' ? cell : Number.NaN)),
  };
}

function codesOf(cells: readonly (string | number | undefined)[]): CodeColumn {
  const dictionary = createDictionary();
  const codes = Uint16Array.from(cells, (cell) => (cell === undefined ? 0 : dictionary.codeOf(String(cell))));
  return { kind: 'code', codes, values: dictionary.values };
}

/** Numbers words in order of appearance; the empty word is always 0. Words with the same key are one. */
function createDictionary(keyOf: (word: string) => string = (word) => word) {
  const values: string[] = [''];
  const known = new Map<string, number>([['', 0]]);
  const codeOf = (value: string): number => {
    const key = keyOf(value);
    const found = known.get(key);
    if (found !== undefined) return found;
    known.set(key, values.length);
    values.push(value);
    return values.length - 1;
  };
  return { values, codeOf };
}
