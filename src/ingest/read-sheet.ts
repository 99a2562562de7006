import { filmFromRecords } from '../game/film.ts';
import { decodePieces } from './decode-text.ts';
import type { RowProblem } from './row-problem.ts';
import { createSheetReader } from './sheet-reader.ts';
import type { SheetOptions, SheetReading } from './sheet-reading.ts';

export type { RejectedRow } from './rejected-row.ts';
export type { SheetKind } from './sheet-kind.ts';
export type { SheetOptions, SheetReading } from './sheet-reading.ts';

/**
 * A charted sheet (comma, semicolon or tab; UTF-8, UTF-16 or Windows-1252) as a chart, with everything that is wrong
 * with it and every row that was kept out. Never throws on what a file holds. The order of the rows changes nothing
 * but the order of the snaps and, of a snap listed twice, which one counts.
 */
export function readSheet(
  input: { readonly file: string; readonly bytes: Uint8Array },
  options: SheetOptions,
): SheetReading {
  const { file, bytes } = input;
  const decoded = decodePieces(bytes);
  if (decoded.kind === 'refused') return refusedSheet(file, decoded.reason);
  const { encoding, pieces } = decoded;
  const reader = createSheetReader({ file, encoding, length: bytes.length }, options);
  for (const piece of pieces) reader.push(piece);
  const reading = reader.finish();
  if (encoding !== 'windows-1252') return reading;
  return { ...reading, problems: [guessedEncoding(file), ...reading.problems] };
}

function refusedSheet(file: string, rule: string): SheetReading {
  return {
    chart: filmFromRecords([], file),
    problems: [{ severity: 'fault', file, row: 0, found: '', rule }],
    rejected: [],
    headers: [],
    unmapped: [],
    delimiter: ',',
    encoding: 'none',
    rowsRead: 0,
    blankRows: 0,
    leftOut: 0,
  };
}

function guessedEncoding(file: string): RowProblem {
  const rule = 'is not UTF-8 text and was read as Windows-1252; look at letters with accents';
  return { severity: 'warning', file, row: 0, found: '', rule };
}
