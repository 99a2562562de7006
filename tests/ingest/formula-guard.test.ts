import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSheet } from '../../src/ingest/read-sheet.ts';
import { toCsv, withoutGuard } from '../../src/ingest/write-csv.ts';
import { rejectsCsv } from '../../src/season/rejects.ts';

/** First characters a spreadsheet takes for a formula. Source: OWASP, "CSV Injection" (from memory). */
const STARTS = ['=', '+', '-', '@', '\t', '\r'];

/** The first character of every cell of a CSV text as a spreadsheet sees it: without quotation marks. */
function firstCharacters(csv: string): string[] {
  const cells = csv.match(/(?:"(?:[^"]|"")*"|[^",\r\n]*)(?=,|\r\n|$)/g) ?? [];
  return cells.map((cell) => (cell.startsWith('"') ? cell.slice(1) : cell)[0] ?? '');
}

const isSignedNumber = (cell: string) => /^[+-]\d+(?:\.\d+)?$/.test(cell);

describe('our CSV opened in a spreadsheet executes nothing', () => {
  it.each(STARTS)('a cell that begins with %j is written behind an apostrophe', (start) => {
    const csv = toCsv([['note'], [`${start}cmd|' /C calc'!A0`]]);
    expect(firstCharacters(csv)).toContain("'");
    expect(firstCharacters(csv).filter((character) => STARTS.includes(character))).toEqual([]);
  });

  it.each([' =1+1', '  @SUM(A1)', '\n=1+1', '\r\n+1+1', '\u00a0-2+3', '\u2003=A1', '\ufeff=A1', ' \n =A1', '\nnote'])(
    'a formula behind spaces or line feeds, %j, is written behind an apostrophe and read as it was',
    (cell) => {
      const csv = toCsv([[cell]]);
      expect(csv.replace(/^"/, '').startsWith("'")).toBe(true);
      expect(withoutGuard(csv.replace(/^"|"?\r\n$/g, ''))).toBe(cell);
    },
  );

  it('spaces before a plain signed number or a word change nothing', () => {
    expect(toCsv([[' -7', ' word']])).toBe('" -7"," word"\r\n');
  });

  it('holds for any text, and a plain signed number stays a number', () => {
    const cell = fc
      .tuple(fc.constantFrom(...STARTS, ' ', 'a', '"'), fc.string({ unit: 'binary', maxLength: 6 }))
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(cell, (text) => {
        fc.pre(!isSignedNumber(text));
        expect(STARTS).not.toContain(firstCharacters(toCsv([[text]]))[0]);
      }),
    );
    expect(toCsv([[-7, '+3.5', '-12']])).toBe('-7,+3.5,-12\r\n');
  });

  it('holds for the rejects file: header, reasons and cells as they were written', () => {
    const bytes = Buffer.from(
      'game,down,to_go,ball_on,play_kind,=1+1\n=A1,9,10,own 35,run,@x\n-x,1O,1,own 35,run,+1+1\n',
    );
    const { rejected } = readSheet({ file: '=week/opponent.csv', bytes }, { kind: 'opponent' });
    const csv = new TextDecoder().decode(rejectsCsv([{ file: '=week/opponent.csv', rows: rejected }]));
    expect(rejected).toHaveLength(2);
    expect(firstCharacters(csv).filter((character) => STARTS.includes(character))).toEqual([]);
  });
});
