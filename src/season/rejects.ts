import type { RejectedRow } from '../ingest/read-sheet.ts';
import { toCsv } from '../ingest/write-csv.ts';

/** A row that stayed out of the numbers, with the file it stands in. */
export interface RejectedInFile {
  readonly file: string;
  readonly row: RejectedRow;
}

/** The rejects file: file, row, reasons, then the cells as they were written. */
export function rejectsCsv(rejected: readonly RejectedInFile[]): string {
  const rows = rejected.map(({ file, row }) => [file, row.row, row.reasons.join('; '), ...row.cells]);
  return toCsv([['file', 'row', 'reasons', 'cells as written'], ...rows]);
}
