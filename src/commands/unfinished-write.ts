import { existsSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { alone } from './write-lock.ts';

/** One step of putting files in place: where a complete file waits and where it goes, or what is taken away (null). */
export interface Move {
  readonly waiting: string | null;
  readonly name: string;
}

/** Stands in a folder while a set of files is put in place. */
const MARK = 'unfinished-write.txt';

const WORDS = [
  'A run of pressure-plan was stopped while it put its files in place: some are new, some are of the run before.',
  'Run the same command again; it first puts in place what the stopped run had ready.',
].join('\n');

/** The last line of a mark that was written to its end. */
const WHOLE = 'That is all.';

/**
 * Puts a set of files in place, all from one run even when the run is killed in between: what is to be done is written down
 * first, and the next writer finishes it. Call it while no other run writes in the folder.
 */
export function moveAll(folder: string, moves: readonly Move[]): void {
  const several = moves.length > 1;
  const lines = moves.map((move) => JSON.stringify(move));
  if (several) writeFileSync(join(folder, MARK), `${[WORDS, ...lines, WHOLE].join('\n')}\n`);
  for (const move of moves) moveOne(folder, move);
  if (several) rmSync(join(folder, MARK), { force: true });
}

/** Finishes what a killed run had begun to put in place in a folder; without a mark, nothing is done. */
export async function finishUnfinished(folder: string): Promise<void> {
  const mark = join(folder, MARK);
  if (!existsSync(mark)) return;
  await alone(folder, () => {
    // A living run takes its mark away before it gives up the lock: one that is seen here was left.
    if (!existsSync(mark)) return;
    for (const move of movesIn(readFileSync(mark, 'utf8'))) moveOne(folder, move);
    rmSync(mark, { force: true });
  });
}

function moveOne(folder: string, { waiting, name }: Move): void {
  if (waiting === null) rmSync(join(folder, name), { force: true });
  else if (existsSync(join(folder, waiting))) renameSync(join(folder, waiting), join(folder, name));
}

/** The moves of a whole mark; of one that was cut off none, for then none was begun. */
function movesIn(text: string): Move[] {
  const lines = text.trimEnd().split('\n');
  if (lines.at(-1) !== WHOLE) return [];
  return lines.slice(2, -1).flatMap((line) => moveOf(line) ?? []);
}

/** A line of the mark; nothing but what the writer itself would have written is followed. */
function moveOf(line: string): Move | null {
  const read = /^\{"waiting":(?:null|"([^"\\]+)"),"name":"([^"\\]+)"\}$/.exec(line);
  const name = read?.[2];
  if (name === undefined || /(^|[\\/])\.\.([\\/]|$)|^[\\/]|^[a-z]:/i.test(name)) return null;
  const waiting = read?.[1] ?? null;
  if (
    waiting !== null &&
    !(waiting.startsWith(`${name}.writing-`) && /^[\d-]+$/.test(waiting.slice(`${name}.writing-`.length)))
  )
    return null;
  return { waiting, name };
}
