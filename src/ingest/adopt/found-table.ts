import Papa from 'papaparse';
import { isRemark } from '../sheet-dialect.ts';
import type { SideBySide } from '../side-by-side.ts';
import { unfoldHeaders, unfoldRow } from '../side-by-side.ts';
import { filledCount } from './filled-count.ts';
import { findHeaderRow } from './header-row.ts';
import { findSideBySide } from './repeated-block.ts';
import { isTotalLabel } from './trade-words.ts';

/** A row of a foreign sheet, with its 1-based row in the file. */
export interface TableRow {
  readonly row: number;
  readonly cells: readonly string[];
}

/** A row that is no snap, and what it looks like. */
export interface AsideRow extends TableRow {
  readonly why: 'title' | 'repeated header' | 'total' | 'note';
}

/**
 * The snaps of a foreign sheet, found among titles, totals and notes. `headers` are trimmed; without a header row they
 * are `column A`, `column B` ... and `headerRow` is 0. Rows hold as many cells as there are headers.
 */
export interface FoundTable {
  readonly headerRow: number;
  readonly headers: readonly string[];
  readonly rows: readonly TableRow[];
  readonly aside: readonly AsideRow[];
  readonly sideBySide: SideBySide | undefined;
}

/** Rows looked at; a profile drafted from them fits the rest. Judgment: some seasons of one team. */
const MOST_ROWS = 50_000;

/** A row with a smaller share of the cells that rows usually fill is a title or a note; judgment. */
const SPARSE = 0.34;

/** Finds the table in the text of a sheet: delimiter, header row, several snaps beside one another, rows set aside. */
export function findTable(text: string): FoundTable {
  const all = parseRows(text);
  const header = findHeaderRow(all);
  const written = header.row === 0 ? header.headers : header.headers.map((one) => one.trim());
  const sideBySide = findSideBySide(written);
  const headers = sideBySide ? unfoldHeaders(sideBySide, written) : written;
  const below = all.filter(({ row }) => row > header.row);
  const usual = usualFill(below);
  const keys = written.map((one) => one.toLowerCase());
  const rows: TableRow[] = [];
  const aside: AsideRow[] = all
    .filter(({ row, cells }) => row < header.row && filledCount(cells) > 0)
    .map((row) => ({ ...row, why: 'title' as const }));
  for (const row of below) {
    if (filledCount(row.cells) === 0) continue;
    const why = asideReason(row, keys, usual);
    if (why !== undefined) aside.push({ ...row, why });
    else rows.push(...snapsOf(row, headers.length, sideBySide));
  }
  return { headerRow: header.row, headers, rows, aside, sideBySide };
}

function snapsOf({ row, cells }: TableRow, width: number, sideBySide: SideBySide | undefined): TableRow[] {
  const unfolded = sideBySide ? unfoldRow(sideBySide, cells) : [cells];
  return unfolded.map((snap) => ({ row, cells: Array.from({ length: width }, (_, i) => (snap[i] ?? '').trim()) }));
}

function parseRows(text: string): TableRow[] {
  const delimiter = likelyDelimiter(text);
  const { data } = Papa.parse<string[]>(text, { delimiter, preview: MOST_ROWS });
  return data.map((cells, i) => ({ row: i + 1, cells })).filter(({ cells }) => !isRemark(cells));
}

/** The delimiter that cuts most rows into the same number of cells, and more than one. */
function likelyDelimiter(text: string): string {
  const scored = [',', ';', '\t'].map((delimiter) => {
    const { data } = Papa.parse<string[]>(text, { delimiter, preview: 60 });
    const widths = new Map<number, number>();
    for (const cells of data) if (cells.length > 1) widths.set(cells.length, (widths.get(cells.length) ?? 0) + 1);
    const score = Math.max(0, ...[...widths].map(([width, rows]) => rows * 100 + Math.min(width, 99)));
    return { delimiter, score };
  });
  scored.sort((left, right) => right.score - left.score);
  return scored[0]?.delimiter ?? ',';
}

function usualFill(rows: readonly TableRow[]): number {
  const fills = rows
    .map(({ cells }) => filledCount(cells))
    .filter((fill) => fill > 0)
    .sort((left, right) => left - right);
  return fills[Math.floor(fills.length / 2)] ?? 0;
}

function asideReason({ cells }: TableRow, keys: readonly string[], usual: number): AsideRow['why'] | undefined {
  const fill = filledCount(cells);
  if (keys.every((key, i) => key === (cells[i] ?? '').trim().toLowerCase())) return 'repeated header';
  if (isTotalLabel(cells.find((cell) => cell.trim() !== '') ?? '')) return 'total';
  return fill <= Math.max(1, SPARSE * usual) ? 'note' : undefined;
}
