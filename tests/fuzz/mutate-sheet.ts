import type { Random } from '../../src/stats/random.ts';
import { NASTY_TEXTS } from './nasty-text.ts';

/** One way to spoil a sheet: from its bytes, with the given random numbers. */
export interface SheetMutation {
  readonly name: string;
  readonly spoil: (bytes: Uint8Array, random: Random) => Uint8Array;
}

/** Cells of a plain sheet (no cell of the seeds holds a comma, a quotation mark or a line end). */
export function cellsOf(bytes: Uint8Array): string[][] {
  const lines = Buffer.from(bytes).toString('utf8').split(/\r?\n/);
  return lines.filter((line) => line !== '').map((line) => line.split(','));
}

/** Cells as a sheet, quoted where they must be. */
export function sheetOfCells(rows: readonly (readonly string[])[]): Uint8Array {
  const cell = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  return Buffer.from(`${rows.map((row) => row.map(cell).join(',')).join('\n')}\n`, 'utf8');
}

const onBytes = (name: string, spoil: (bytes: Uint8Array, random: Random) => Uint8Array): SheetMutation => ({
  name,
  spoil: (bytes, random) => spoil(Uint8Array.from(bytes), random),
});

const onCells = (name: string, spoil: (rows: string[][], random: Random) => string[][]): SheetMutation => ({
  name,
  spoil: (bytes, random) => sheetOfCells(spoil(cellsOf(bytes), random)),
});

const onText = (name: string, spoil: (text: string, random: Random) => string | Uint8Array): SheetMutation => ({
  name,
  spoil: (bytes, random) => {
    const spoilt = spoil(Buffer.from(bytes).toString('utf8'), random);
    return typeof spoilt === 'string' ? Buffer.from(spoilt, 'utf8') : spoilt;
  },
});

const pick = <T>(items: readonly T[], random: Random): T => items[random.integer(items.length)]!;
const times = (random: Random, most: number) => Array.from({ length: 1 + random.integer(most) });

/** The same columns in another order. */
export function shuffleColumns(rows: readonly (readonly string[])[], random: Random): string[][] {
  const order = random.shuffle([...(rows[0] ?? []).keys()]);
  return rows.map((row) => order.map((from) => row[from] ?? ''));
}

/** The ways a sheet is spoilt. Each is small, so that a finding says what caused it. */
export const SHEET_MUTATIONS: readonly SheetMutation[] = [
  onBytes('cut in half', (bytes, random) => bytes.subarray(0, random.integer(bytes.length + 1))),
  onBytes('bytes flipped', (bytes, random) => {
    for (const _ of times(random, 12)) bytes[random.integer(bytes.length)] = random.integer(256);
    return bytes;
  }),
  onBytes('bits flipped', (bytes, random) => {
    for (const _ of times(random, 12)) {
      const at = random.integer(bytes.length);
      bytes[at] = (bytes[at] ?? 0) ^ (1 << random.integer(8));
    }
    return bytes;
  }),
  onBytes('a piece doubled', (bytes, random) => {
    const [from, to] = [random.integer(bytes.length), random.integer(bytes.length)].sort((a, b) => a - b);
    return Buffer.concat([bytes.subarray(0, to), bytes.subarray(from)]);
  }),
  onBytes('random bytes', (_, random) => Uint8Array.from({ length: random.integer(4000) }, () => random.integer(256))),
  onBytes('NUL inside', (bytes, random) => {
    const at = random.integer(bytes.length);
    return Buffer.concat([bytes.subarray(0, at), new Uint8Array(1 + random.integer(5)), bytes.subarray(at)]);
  }),
  onCells('columns shuffled', (rows, random) => shuffleColumns(rows, random)),
  onCells('rows shuffled', ([header = [], ...rows], random) => [header, ...random.shuffle(rows)]),
  onCells('rows repeated', (rows, random) => [...rows, ...times(random, 20).map(() => pick(rows, random))]),
  onCells('a column dropped', (rows, random) => {
    const out = random.integer(rows[0]?.length ?? 1);
    return rows.map((row) => row.filter((_, i) => i !== out));
  }),
  onCells('a column doubled', (rows, random) => {
    const which = random.integer(rows[0]?.length ?? 1);
    return rows.map((row) => [...row, row[which] ?? '']);
  }),
  onCells('10,000 columns', (rows, random) => {
    const name = random.uniform() < 0.5 ? () => '' : (i: number) => `extra ${i}`;
    const more = Array.from({ length: 10_000 }, (_, i) => i);
    return rows.slice(0, 20).map((row, r) => [...row, ...more.map((i) => (r === 0 ? name(i) : String(i % 7)))]);
  }),
  onCells('nasty cells', (rows, random) => {
    for (const _ of times(random, 8)) {
      const row = rows[random.integer(rows.length)]!;
      row[random.integer(row.length)] = pick(NASTY_TEXTS, random);
    }
    return rows;
  }),
  onCells('a nasty column', (rows, random) => {
    const [column, text] = [random.integer(rows[0]?.length ?? 1), pick(NASTY_TEXTS, random)];
    return rows.map((row, r) => row.map((cell, i) => (i === column && r > 0 ? text : cell)));
  }),
  onCells('a nasty header', (rows, random) => {
    const header = rows[0] ?? [];
    header[random.integer(header.length)] = pick(NASTY_TEXTS, random);
    return rows;
  }),
  onCells('cells moved', (rows, random) => {
    for (const _ of times(random, 30)) {
      const [from, to] = [pick(rows, random), pick(rows, random)];
      to[random.integer(to.length)] = pick(from, random);
    }
    return rows;
  }),
  onCells('ragged rows', (rows, random) =>
    rows.map((row) => (random.uniform() < 0.2 ? row.slice(random.integer(4)) : row)),
  ),
  onCells('blank cells', (rows, random) =>
    rows.map((row, r) => row.map((cell) => (r > 0 && random.uniform() < 0.4 ? '' : cell))),
  ),
  onCells('numbers out of range', (rows, random) =>
    rows.map((row, r) =>
      row.map((cell) =>
        r > 0 && /^\d+$/.test(cell) && random.uniform() < 0.1 ? pick(['-1', '1e9', '0', '101', '3.5'], random) : cell,
      ),
    ),
  ),
  onText('a long cell', (text, random) =>
    text.replace(/,/g, (comma) => (random.uniform() < 0.001 ? `,${'x'.repeat(200_000)}` : comma)),
  ),
  onText('open quotation marks', (text, random) =>
    text.replace(/,/g, (comma) => (random.uniform() < 0.003 ? ',"' : comma)),
  ),
  onText('mixed newlines', (text, random) =>
    text.replace(/\n/g, () => pick(['\n', '\r\n', '\r', '\n\n', '\u2028'], random)),
  ),
  onText('carriage returns', (text) => text.replace(/\n/g, '\r')),
  onText('other delimiters', (text, random) => text.replaceAll(',', pick([';', '\t', '|', ';;', ', '], random))),
  onText('a byte-order mark or several', (text, random) => '\ufeff'.repeat(1 + random.integer(3)) + text),
  onText('UTF-16', (text, random) => {
    const bytes = Buffer.from(`\ufeff${text}`, 'utf16le');
    return random.uniform() < 0.5 ? bytes : bytes.swap16();
  }),
  onText('UTF-16 without its mark, or cut', (text, random) => {
    const bytes = Buffer.from(text, 'utf16le');
    return bytes.subarray(random.integer(2), bytes.length - random.integer(9));
  }),
  onText('lone surrogates', (text, random) => {
    const at = random.integer(text.length);
    return Buffer.from(`\ufeff${text.slice(0, at)}\ud800,\udc00${text.slice(at)}`, 'utf16le');
  }),
  onText('Windows-1252', (text, random) =>
    Buffer.from(
      text.replace(/e/g, (e) => (random.uniform() < 0.01 ? 'é' : e)),
      'latin1',
    ),
  ),
  onText(
    'title rows above and totals below',
    (text, random) => `${'My season,,,\n'.repeat(random.integer(3))}\n${text}Total,,,${'9'.repeat(40)}\n`,
  ),
  onText('everything quoted', (text) => text.replace(/[^,\n]+/g, '"$&"')),
];
