import type { RejectedRow } from '../ingest/read-sheet.ts';
import { describeReason, oncePerKind } from '../ingest/row-problem.ts';
import { toCsv } from '../ingest/write-csv.ts';

/** The rows of a file that stayed out of the numbers. */
export interface RejectedInFile {
  readonly file: string;
  readonly rows: readonly RejectedRow[];
}

/** Rows written at a time, so that of a million of them only so many are ever laid out as cells; judgment. */
const PORTION = 1000;

/** The rejects file as UTF-8: file, row, reasons, then the cells as they were written. */
export function rejectsCsv(rejected: readonly RejectedInFile[]): Uint8Array {
  const encoder = new TextEncoder();
  const portions = [encoder.encode(toCsv([['file', 'row', 'reasons', 'cells as written']]))];
  const reasonOf = oncePerKind(describeReason);
  for (const { file, rows } of rejected) {
    const written = ({ row, faults, cells }: RejectedRow) => [file, row, faults.map(reasonOf).join('; '), ...cells];
    for (let from = 0; from < rows.length; from += PORTION) {
      portions.push(encoder.encode(toCsv(rows.slice(from, from + PORTION).map(written))));
    }
  }
  return inOne(portions);
}

function inOne(portions: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(portions.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const portion of portions) {
    whole.set(portion, at);
    at += portion.length;
  }
  return whole;
}
