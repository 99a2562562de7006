import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FILM_COLUMNS } from '../../src/game/columns.ts';
import { type Film, numberAt, textAt } from '../../src/game/film.ts';
import { readSheet } from '../../src/ingest/read-sheet.ts';
import { createRandom } from '../../src/stats/random.ts';
import { cellsOf, SHEET_MUTATIONS, sheetOfCells, shuffleColumns } from './mutate-sheet.ts';
import { NASTY_TEXTS } from './nasty-text.ts';
import { smallSeason } from './small-season.ts';
import { trySheet } from './trial.ts';

const text = String(Buffer.from(smallSeason()['week-09/opponent.csv'] ?? [])).replaceAll('\r\n', '\n');
const sheet = Uint8Array.from(Buffer.from(text));
const read = (bytes: Uint8Array) => readSheet({ file: 'sheet.csv', bytes }, { kind: 'opponent' });
const whole = read(sheet).chart;

/** Every snap as a line of its cells, in whatever order the columns came. */
function snapsOf(chart: Film): string[] {
  return Array.from({ length: chart.size }, (_, i) =>
    JSON.stringify(FILM_COLUMNS.map(({ name, kind }) => (kind === 'number' ? numberAt : textAt)(chart, name, i) ?? '')),
  );
}

describe('a spoilt sheet is read, named or refused, never a crash', () => {
  it.each(SHEET_MUTATIONS)('$name', ({ name, spoil }) => {
    for (let seed = 0; seed < 3; seed++) {
      const outcome = trySheet(spoil(sheet, createRandom(`${name} ${seed}`)), { kind: 'opponent' });
      expect(outcome.kind, JSON.stringify(outcome)).not.toBe('bug');
    }
  });

  it('holds for cells of any kind under our own headers', () => {
    const cell = fc.oneof(
      fc.constantFrom(...NASTY_TEXTS.slice(0, -1)),
      fc.string({ unit: 'binary', maxLength: 8 }),
      fc.integer().map(String),
    );
    const headers = FILM_COLUMNS.map(({ name }) => name as string);
    const rows = fc.array(fc.array(cell, { minLength: headers.length, maxLength: headers.length }), { maxLength: 6 });
    fc.assert(
      fc.property(rows, fc.constantFrom('opponent', 'own', 'live'), (cells, kind) => {
        expect(trySheet(sheetOfCells([headers, ...cells]), { kind: kind as 'own' }).kind).not.toBe('bug');
      }),
      { numRuns: 30 },
    );
  });

  it('holds for bytes of any kind', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        expect(trySheet(bytes, { kind: 'opponent' }).kind).not.toBe('bug');
      }),
      { numRuns: 100 },
    );
  });
});

describe('what must not matter does not', () => {
  it('the order of the columns: the same chart', () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const { chart, problems } = read(sheetOfCells(shuffleColumns(cellsOf(sheet), createRandom(seed))));
        expect(snapsOf(chart)).toEqual(snapsOf(whole));
        expect([...chart.rowOf]).toEqual([...whole.rowOf]);
        expect(problems).toEqual([]);
      }),
      { numRuns: 8 },
    );
  });

  it.each<[string, Uint8Array]>([
    ['a byte-order mark', Buffer.from(`\ufeff${text}`)],
    ['UTF-16, little end first', Buffer.from(`\ufeff${text}`, 'utf16le')],
    ['UTF-16, big end first', Buffer.from(`\ufeff${text}`, 'utf16le').swap16()],
    ['UTF-16 without its mark', Buffer.from(text, 'utf16le')],
    ['CR and LF', Buffer.from(text.replaceAll('\n', '\r\n'))],
    ['CR alone', Buffer.from(text.replaceAll('\n', '\r'))],
    ['semicolons', Buffer.from(text.replaceAll(',', ';'))],
    ['tabs', Buffer.from(text.replaceAll(',', '\t'))],
    ['every cell quoted', Buffer.from(text.replace(/[^,\n]+/g, '"$&"'))],
    ['no line end at the end', Buffer.from(text.trimEnd())],
    ['10,000 columns of something else', wide()],
  ])('%s: the same snaps', (_, bytes) => {
    expect(snapsOf(read(bytes).chart)).toEqual(snapsOf(whole));
  });
});

/** The sheet with columns beside ours that we do not know. */
function wide(): Uint8Array {
  const names = Array.from({ length: 10_000 }, (_, i) => `extra ${i}`).join(',');
  const cells = ',x'.repeat(10_000);
  return Buffer.from(
    text
      .trimEnd()
      .split('\n')
      .map((line, i) => (i === 0 ? `${line},${names}` : `${line}${cells}`))
      .join('\n'),
  );
}

describe('damage stays where it is', () => {
  const [header = [], ...rows] = cellsOf(sheet);

  it('repeated rows are named and left out, and nothing else changes', () => {
    fc.assert(
      fc.property(fc.array(fc.nat({ max: rows.length - 1 }), { minLength: 1, maxLength: 30 }), (again) => {
        const { chart, rejected, problems } = read(sheetOfCells([header, ...rows, ...again.map((i) => rows[i] ?? [])]));
        expect(snapsOf(chart)).toEqual(snapsOf(whole));
        expect(rejected.map(({ row }) => row)).toEqual(again.map((_, i) => rows.length + 2 + i));
        expect(problems.filter(({ severity }) => severity === 'fault')).toHaveLength(again.length);
      }),
      { numRuns: 20 },
    );
  });

  it('a sheet cut off after any row holds the snaps of the rows before', () => {
    for (const kept of [0, 1, 17, rows.length - 1])
      expect(snapsOf(read(sheetOfCells([header, ...rows.slice(0, kept)])).chart)).toEqual(
        snapsOf(whole).slice(0, kept),
      );
  });

  it('a spoilt cell touches its own row only', () => {
    const games = header.indexOf('game');
    fc.assert(
      fc.property(
        fc.nat({ max: rows.length - 1 }),
        fc.nat({ max: header.length - 1 }),
        fc.constantFrom(...NASTY_TEXTS),
        (r, c, text) => {
          fc.pre(c !== games);
          const spoilt = rows.map((row, i) => (i === r ? row.map((cell, j) => (j === c ? text : cell)) : row));
          const { chart } = read(sheetOfCells([header, ...spoilt]));
          const others = (all: Film) => snapsOf(all).filter((_, i) => all.rowOf[i] !== r + 2);
          expect(others(chart)).toEqual(others(whole));
        },
      ),
      { numRuns: 30 },
    );
  });

  it('a cell of 50 MB costs its own row and no other', () => {
    const huge = rows.map((row, i) => (i === 3 ? [...row.slice(0, -1), 'x'.repeat(50_000_000)] : row));
    const { chart, rejected } = read(sheetOfCells([header, ...huge]));
    expect(chart.size + rejected.length).toBe(rows.length);
    expect(rejected.map(({ row, reasons }) => [row, reasons[0]])).toEqual([
      [5, expect.stringContaining('over a million characters')],
    ]);
  });

  it('a header of 100,000 columns is refused in words before its cells are compared with one another', () => {
    const names = Array.from({ length: 100_000 }, (_, i) => `extra ${i}`);
    expect(trySheet(sheetOfCells([[...header, ...names], ...rows.slice(0, 2)]), { kind: 'opponent' })).toMatchObject({
      kind: 'refused',
      words: expect.stringContaining('columns, more than any spreadsheet holds (16384)'),
    });
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])(
    'a header or a game called %s is a text like any other',
    (name) => {
      const named = read(
        sheetOfCells([
          [...header, name],
          ...rows.map((row) => [...row.map((cell, j) => (j === header.indexOf('game') ? name : cell)), name]),
        ]),
      );
      expect(named.chart.size).toBe(new Set(rows.map((row) => row[header.indexOf('snap')])).size);
      expect(textAt(named.chart, 'game', 0)).toBe(name);
      expect(named.unmapped).toEqual([name]);
    },
  );
});
