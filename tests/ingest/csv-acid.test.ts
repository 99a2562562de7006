import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { asWritten } from '../../src/ingest/cell-place.ts';
import { decodeText } from '../../src/ingest/decode-text.ts';
import { readSheet } from '../../src/ingest/read-sheet.ts';
import { createRowSplitter } from '../../src/ingest/split-rows.ts';
import { toCsv } from '../../src/ingest/write-csv.ts';

/** Source of every case: the published acid tests csv-spectrum 2.0.0 (BSD-2-Clause), CSV files beside the JSON they mean. */
const folder = dirname(createRequire(import.meta.url).resolve('csv-spectrum'));
const cases = readdirSync(join(folder, 'csvs')).map((file) => {
  const name = basename(file, '.csv');
  // One of the cases holds its only record bare instead of in a list.
  const meant: Record<string, string>[] = [
    JSON.parse(readFileSync(join(folder, 'json', `${name}.json`), 'utf8')),
  ].flat();
  return { name, bytes: readFileSync(join(folder, 'csvs', file)), meant: mended(name, meant) };
});

/** The published case location_coordinates 2.0.0 holds another telephone number in its JSON than in its CSV. */
function mended(name: string, meant: Record<string, string>[]): Record<string, string>[] {
  return name === 'location_coordinates' ? [{ ...meant[0], 'Contact Phone Number': '2095257564' }] : meant;
}

/** The rows of a text as our reader cuts it, in pieces of `size` characters. */
function rowsOf(text: string, size: number): string[][] {
  const rows: string[][] = [];
  const splitter = createRowSplitter({ delimiter: ',', newline: '\n' }, (cells) => {
    rows.push(cells.map(asWritten));
    return 'taken';
  });
  for (let at = 0; at < text.length; at += size) splitter.push(text.slice(at, at + size));
  splitter.end();
  return rows;
}

function textOf(bytes: Uint8Array): string {
  const decoded = decodeText(bytes);
  return decoded.kind === 'text' ? decoded.text : decoded.reason;
}

/** A line break within a cell is a line break, whichever the file has (the CRLF files mean the same JSON as the others). */
const sameBreaks = (cell: string) => cell.replaceAll('\r\n', '\n');

function recordsOf([header = [], ...rows]: string[][]): Record<string, string>[] {
  return rows.map((row) => Object.fromEntries(header.map((name, i) => [name, sameBreaks(row[i] ?? '')])));
}

describe('the published CSV acid tests', () => {
  it('are all there', () => expect(cases.length).toBeGreaterThanOrEqual(12));

  it.each(cases)(
    '$name is cut into the cells it means, in one piece or one character at a time',
    ({ bytes, meant }) => {
      const wanted = meant.map((record) =>
        Object.fromEntries(Object.entries(record).map(([name, cell]) => [name, sameBreaks(cell)])),
      );
      for (const size of [1, 7, 1_000_000]) expect(recordsOf(rowsOf(textOf(bytes), size))).toEqual(wanted);
    },
  );

  it.each(cases)('$name goes through the sheet reader with its headers and every row counted', ({ bytes, meant }) => {
    const reading = readSheet({ file: 'acid.csv', bytes }, { kind: 'opponent' });
    expect(reading.headers).toEqual(Object.keys(meant[0] ?? {}));
    expect(reading.rowsRead + reading.blankRows).toBe(meant.length);
  });

  it.each(cases)('$name written by us reads back as the same cells', ({ meant }) => {
    const rows = [Object.keys(meant[0] ?? {}), ...meant.map((record) => Object.values(record))];
    const back = rowsOf(toCsv(rows), 1_000_000);
    expect(back.map((row) => row.map(sameBreaks))).toEqual(rows.map((row) => row.map(sameBreaks)));
  });
});
