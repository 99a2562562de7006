import Papa from 'papaparse';
import { type ColumnName, FILM_COLUMNS } from '../game/columns.ts';
import { isRemark } from '../ingest/sheet-dialect.ts';
import { toCsv, withoutGuard } from '../ingest/write-csv.ts';

/** A snap as it is written in its sheet: the text of every cell that is charted. */
export type SnapCells = Readonly<Partial<Record<ColumnName, string>>>;

/** A sheet with our headers as it is typed into. */
export interface ChartSheet {
  /** Lines that explain the columns; they stay as they are. */
  readonly remarks: readonly string[];
  readonly columns: readonly ColumnName[];
  readonly snaps: readonly SnapCells[];
}

const NAMES = FILM_COLUMNS.map(({ name }) => name);
const KNOWN: ReadonlySet<string> = new Set(NAMES);

/** A sheet's cells as they are written, or null when its headers are not ours and it is read through a profile. */
export function readChartSheet(text: string): ChartSheet | null {
  const { data } = Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { delimiter: ',', skipEmptyLines: 'greedy' });
  const rows = data.filter((row) => !isRemark(row));
  const header = (rows[0] ?? []).map((name) => name.trim().toLowerCase());
  if (header.length === 0 || !header.every((name) => KNOWN.has(name))) return null;
  const columns = header as ColumnName[];
  const remarks = data.filter(isRemark).map((row) => row.join(',').replace(/,+$/, ''));
  return { remarks, columns, snaps: rows.slice(1).map((row) => cellsOf(row, columns)) };
}

function cellsOf(row: readonly string[], columns: readonly ColumnName[]): SnapCells {
  const filled = columns.map((name, i) => [name, withoutGuard(row[i]?.trim() ?? '')] as const);
  return Object.fromEntries(filled.filter(([, text]) => text !== ''));
}

/** The columns of a sheet with those that its snaps use beside them, at their places in the template. */
export function columnsWith(columns: readonly ColumnName[], snaps: readonly SnapCells[]): readonly ColumnName[] {
  const here = new Set<string>(columns);
  const more = NAMES.filter((name) => !here.has(name) && snaps.some((snap) => snap[name] !== undefined));
  return more.length === 0 ? columns : [...columns, ...more];
}

/** The head of a sheet: its remarks and its header. */
export function sheetHead({ remarks, columns }: Pick<ChartSheet, 'remarks' | 'columns'>): string {
  return toCsv([...remarks.map((remark) => [remark]), [...columns]]);
}

/** One snap as a line of its sheet, line end included. */
export function sheetLine(snap: SnapCells, columns: readonly ColumnName[]): string {
  return toCsv([columns.map((name) => snap[name])]);
}
