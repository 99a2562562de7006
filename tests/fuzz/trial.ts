import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { halftime } from '../../src/commands/halftime.ts';
import { report } from '../../src/commands/report.ts';
import type { Terminal } from '../../src/commands/terminal.ts';
import type { Film } from '../../src/game/film.ts';
import { readSheet, type SheetOptions, type SheetReading } from '../../src/ingest/read-sheet.ts';
import { describeProblem } from '../../src/ingest/row-problem.ts';
import { UserProblem } from '../../src/season/user-problem.ts';
import { impossibleNumbers } from './plan-numbers.ts';

/** How an input ended: `correct`, `faults named`, `refused` in words, or a `bug` with what is wrong. */
export type Outcome =
  | { readonly kind: 'correct' | 'faults named' }
  | { readonly kind: 'refused'; readonly words: string }
  | { readonly kind: 'bug'; readonly words: string };

const PAGES = ['report.html', 'call-sheet.html', 'tip-sheet.html', 'wristband.html'];
const REPORT = [...PAGES, 'report.json', 'wristband.csv'].sort();
/** Characters that would spoil a line of the terminal. */
export const UNREADABLE = /[\p{Cc}\u202a-\u202e]/u;
/** Says what a cell became when markup in it was not written as text. */
const RAW_MARKUP = /<img src=x|<script>alert|<\/style><script/i;

/** Reads one sheet and holds the reader to what it promises of its counts and problems. */
export function trySheet(bytes: Uint8Array, options: SheetOptions): Outcome {
  try {
    const reading = readSheet({ file: 'sheet.csv', bytes }, options);
    const refused = isRefused(reading);
    const words = reading.problems.map(describeProblem);
    const faults = [
      ...chartFaults(reading.chart),
      ...(refused ? [] : countFaults(reading)),
      ...words
        .filter((line) => line.length > 3000 || UNREADABLE.test(line))
        .map((line) => `unreadable: ${line.slice(0, 200)}`),
      ...(refused && words.length === 0 ? ['refused without a word'] : []),
    ];
    if (faults.length > 0) return bug(faults.slice(0, 3).join('\n'));
    if (refused) return { kind: 'refused', words: words.join('\n') };
    return { kind: words.length > 0 ? 'faults named' : 'correct' };
  } catch (error) {
    return crashed(error);
  }
}

function isRefused({ problems, chart, rejected }: SheetReading): boolean {
  return problems.some(({ severity, row }) => severity === 'fault' && row <= 1) || chart.size + rejected.length === 0;
}

function countFaults({ chart, rejected, leftOut, rowsRead }: SheetReading): string[] {
  const counted = chart.size + rejected.length + leftOut;
  return [
    ...(counted === rowsRead ? [] : [`${rowsRead} rows read, ${counted} accounted for`]),
    ...(rejected.some(({ reasons }) => reasons.length === 0) ? ['a row was rejected without a reason'] : []),
  ];
}

function chartFaults({ columns, size }: Film): string[] {
  return Object.entries(columns).flatMap(([name, column]) => {
    const entries: ArrayLike<number> = column.kind === 'code' ? column.codes : column.numbers;
    const endless = Array.from(entries).some((value) => Math.abs(value) === Number.POSITIVE_INFINITY);
    return [
      ...(entries.length === size ? [] : [`${name} has ${entries.length} entries for ${size} snaps`]),
      ...(endless ? [`${name} holds a number without end`] : []),
    ];
  });
}

/** Plans and writes the week of a season, and holds what was written to what the tool promises. */
export async function tryReport(season: string): Promise<Outcome> {
  const week = join(season, 'week-09');
  const { ended, numbers } = await watched((terminal) => report(week, {}, terminal));
  const there = outFiles(week);
  if (ended.kind === 'refused') return there.length === 0 ? ended : bug(`refused, yet ${there.join(', ')} was written`);
  if (ended.kind === 'bug') return ended;
  const written = there.filter((name) => name !== 'rejected.csv').sort();
  if (written.join() !== REPORT.join()) return bug(`wrote ${there.join(', ')}`);
  const rest = there.includes('rejected.csv') ? formulas(readFileSync(join(week, 'out/rejected.csv'), 'utf8')) : [];
  const found = [...rest, ...numbers, ...pageFaults(season, PAGES.map(inOut))];
  return found.length > 0 ? bug(found.slice(0, 5).join('\n')) : ended;
}

/** Brings the week up to date with tonight's sheet, as {@link tryReport}. */
export async function tryHalftime(season: string): Promise<Outcome> {
  const week = join(season, 'week-09');
  const before = outFiles(week);
  const { ended, numbers } = await watched((terminal) => halftime(week, {}, terminal));
  const added = outFiles(week).filter((name) => !before.includes(name));
  if (ended.kind === 'refused') return added.length === 0 ? ended : bug(`refused, yet ${added.join(', ')} was written`);
  if (ended.kind === 'bug') return ended;
  if (added.sort().join() !== 'halftime.html,halftime.json') return bug(`wrote ${added.join(', ')}`);
  const found = [...numbers, ...pageFaults(season, [inOut('halftime.html')])];
  return found.length > 0 ? bug(found.slice(0, 5).join('\n')) : ended;
}

/** Runs a command and looks at the numbers of everything it writes as JSON, before "not a number" becomes a blank there. */
export async function watched(
  command: (terminal: Terminal) => Promise<number>,
): Promise<{ ended: Outcome; numbers: string[] }> {
  const { stringify } = JSON;
  const numbers: string[] = [];
  const watching = (value: unknown, ...rest: []) => {
    numbers.push(...impossibleNumbers(value));
    return stringify(value, ...rest);
  };
  JSON.stringify = watching as typeof stringify;
  try {
    return { ended: await ends(command), numbers };
  } finally {
    JSON.stringify = stringify;
  }
}

async function ends(command: (terminal: Terminal) => Promise<number>): Promise<Outcome> {
  const quiet: Terminal = { out: () => {}, note: () => {}, progress: () => {}, today: '2026-10-18' };
  try {
    return { kind: (await command(quiet)) === 0 ? 'correct' : 'faults named' };
  } catch (error) {
    if (!(error instanceof UserProblem)) return crashed(error);
    return error.message.trim() === '' ? bug('refused without a word') : { kind: 'refused', words: error.message };
  }
}

const inOut = (page: string) => join('week-09', 'out', page);

function outFiles(week: string): string[] {
  return existsSync(join(week, 'out')) ? readdirSync(join(week, 'out')) : [];
}

/** Words that stand on a page where something went wrong in its making. */
const LEAKS = ['NaN', 'undefined', 'Infinity', '[object Object]'];

/** Words no page may hold unless the coach's own files do. */
export function pageFaults(season: string, pages: readonly string[]): string[] {
  const inputs = inputsOf(season);
  const leaks = LEAKS.filter((word) => !inputs.includes(word)).map((word) => word.replaceAll(/[[\]]/g, '\\$&'));
  const leak = new RegExp(`.{30}>[^<]*\\b(?:${leaks.join('|')})(?![^<]*</style)[^<]{0,30}`);
  return pages.flatMap((page) => {
    const text = readFileSync(join(season, page), 'utf8');
    const raw = RAW_MARKUP.test(text) ? [`${page} holds markup from a cell`] : [];
    const broken = leaks.length === 0 ? undefined : text.match(leak)?.[0];
    return broken === undefined ? raw : [...raw, `${page}: ${broken}`];
  });
}

/** The text of every file of a season that the coach wrote. */
function inputsOf(season: string): string {
  const names = (readdirSync(season, { recursive: true }) as string[]).filter(
    (name) => !/(^|[\\/])out([\\/]|$)/.test(name) && statSync(join(season, name)).isFile(),
  );
  return [...names, ...names.map((name) => readFileSync(join(season, name), 'utf8'))].join('\n');
}

/**
 * Cells of our own CSV that a spreadsheet would run, also once it took off the spaces and tabs before them. A pasted cell
 * may begin with a tab: where tabs part cells the apostrophe stands behind it, and what follows is text either way.
 */
export function formulas(csv: string, name = 'rejected.csv'): string[] {
  const { data } = Papa.parse<string[]>(csv);
  const found = data.flat().find((cell) => /^\s*[=@]|^\s*[+-](?!\d+(?:\.\d+)?$)/.test(cell));
  return found === undefined ? [] : [`${name} holds a formula: ${JSON.stringify(found.slice(0, 60))}`];
}

export function crashed(error: unknown): Outcome {
  return bug(
    error instanceof Error ? (error.stack ?? error.message).split('\n').slice(0, 6).join('\n') : String(error),
  );
}

function bug(words: string): Outcome {
  return { kind: 'bug', words };
}
