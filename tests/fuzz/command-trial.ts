import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { Readable } from 'node:stream';
import type { Terminal } from '../../src/commands/terminal.ts';
import { formulas, type Outcome, pageFaults, watched } from './trial.ts';

/** A command on a season, and where it may write. */
export interface CommandTrial {
  readonly season: string;
  /** Folders below the season into which it may write. */
  readonly into: readonly string[];
  readonly run: (terminal: Terminal) => Promise<number>;
}

/** One input: what was spoilt, and how the command ended. */
export interface Tried {
  readonly what: string;
  readonly outcome: Outcome;
}

/**
 * Runs a command and holds it to what every command promises: nothing outside its folders is changed, a refusal has words
 * and writes nothing, no page holds markup of a cell, and no table a formula.
 */
export async function tryCommand({ season, into, run }: CommandTrial): Promise<Outcome> {
  const before = printsOf(season);
  const said: string[] = [];
  const { ended, numbers } = await watched((quiet) => run({ ...quiet, out: (text) => void said.push(text) }));
  if (ended.kind === 'bug') return ended;
  const after = printsOf(season);
  const changed = [...new Set([...before.keys(), ...after.keys()])].filter(
    (name) => before.get(name) !== after.get(name),
  );
  const outside = changed.filter((name) => !into.some((folder) => name.startsWith(folder)));
  if (outside.length > 0) return bug(`wrote outside its folder: ${outside.join(', ')}`);
  if (ended.kind === 'refused' && changed.length > 0) return bug(`refused, yet wrote ${changed.join(', ')}`);
  const left = [...after.keys()].filter((name) => basename(name).includes('.writing'));
  const faults = [...left, ...numbers, ...changed.flatMap((name) => fileFaults(season, name))];
  return faults.length > 0 ? bug(faults.slice(0, 5).join('\n')) : ended;
}

/** Name and content of every file of a season. */
function printsOf(season: string): Map<string, string> {
  const names = (readdirSync(season, { recursive: true }) as string[]).filter((name) =>
    statSync(join(season, name)).isFile(),
  );
  return new Map(names.map((name) => [name.replaceAll('\\', '/'), readFileSync(join(season, name), 'latin1')]));
}

function fileFaults(season: string, name: string): string[] {
  if (!existsSync(join(season, name))) return [];
  if (name.endsWith('.csv')) return formulas(readFileSync(join(season, name), 'utf8'), name);
  if (name.endsWith('.html')) return pageFaults(season, [name]);
  return [];
}

/** Does `work` while the standard input gives these bytes. */
export async function withStandardInput<Result>(bytes: Uint8Array, work: () => Promise<Result>): Promise<Result> {
  const there = Object.getOwnPropertyDescriptor(process, 'stdin');
  Object.defineProperty(process, 'stdin', { configurable: true, value: Readable.from([Buffer.from(bytes)]) });
  try {
    return await work();
  } finally {
    if (there) Object.defineProperty(process, 'stdin', there);
  }
}

/** Puts a file into a season's folder. */
export function put(season: string, name: string, bytes: string | Uint8Array): void {
  writeFileSync(join(season, name), bytes);
}

function bug(words: string): Outcome {
  return { kind: 'bug', words };
}
