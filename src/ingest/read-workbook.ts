import { toCsv } from './write-csv.ts';

/** A workbook's sheet as text, or why there is none. */
export type WorkbookReading =
  | { readonly kind: 'sheet'; readonly name: string; readonly csv: string }
  | { readonly kind: 'refused'; readonly reason: string };

/** A workbook larger than this is no chart of snaps; judgment (a season of one team takes under a megabyte). */
const LARGEST_BYTES = 50_000_000;

/** A spreadsheet keeps a time of day as a day of its first year. */
const YEAR_OF_TIMES = 1900;

/**
 * The fullest sheet of an .xlsx workbook as CSV text: every cell as a reader of the sheet would write it, a clock such
 * as 7:42 as `7:42`, a date as 2026-03-10. Never throws on what a file holds.
 *
 * @param bytes - the file as it lies on disk; it is not changed
 */
export async function readWorkbook(bytes: Uint8Array): Promise<WorkbookReading> {
  if (bytes.length > LARGEST_BYTES) return { kind: 'refused', reason: 'is far larger than a chart of snaps' };
  // Few runs meet a workbook, so its reader is loaded only then.
  const { default: readXlsxFile } = await import('read-excel-file/universal');
  try {
    const sheets = await readXlsxFile(Uint8Array.from(bytes).buffer, { parseNumber: writtenNumber, trim: false });
    const fullest = sheets
      .map(({ sheet, data }) => ({ name: sheet, rows: (data as unknown[][]).map((row) => row.map(cellText)) }))
      .sort((left, right) => filledCells(right.rows) - filledCells(left.rows))[0];
    if (fullest === undefined) return { kind: 'refused', reason: 'is a workbook without a sheet' };
    return { kind: 'sheet', name: fullest.name, csv: toCsv(fullest.rows) };
  } catch (error) {
    return { kind: 'refused', reason: `cannot be read as a workbook: ${(error as Error).message}` };
  }
}

/** Whether a file is named as a workbook. */
export function isWorkbookName(name: string): boolean {
  return /\.xlsx$/i.test(name);
}

/** The file keeps 2.6 as 2.6000000000000001. */
function writtenNumber(text: string): string {
  return String(Number(Number(text).toPrecision(15)));
}

function filledCells(rows: readonly (readonly string[])[]): number {
  return rows.reduce((sum, row) => sum + row.filter((cell) => cell.trim() !== '').length, 0);
}

function cellText(cell: unknown): string {
  if (cell === null || cell === undefined) return '';
  return cell instanceof Date ? dateText(cell) : String(cell);
}

function dateText(date: Date): string {
  if (Number.isNaN(date.getTime())) return '';
  const text = date.toISOString();
  if (date.getUTCFullYear() > YEAR_OF_TIMES) return text.slice(0, 10);
  return text.slice(11, 16).replace(/^0/, '');
}
