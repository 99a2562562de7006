import { existsSync, rmSync } from 'node:fs';
import { access, constants, lstat, mkdir, realpath, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { OutputFile } from '../season/store.ts';
import { UserProblem } from '../season/user-problem.ts';
import { removeLeftWaiting } from './left-waiting.ts';
import { finishUnfinished, type Move, moveAll } from './unfinished-write.ts';
import { alone } from './write-lock.ts';

/** Signals that end the program, and the exit code a shell gives them (128 and the number of the signal). */
const SIGNALS = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;

/** Calls so far: with the process id a name that no other call uses. */
let calls = 0;

/**
 * Writes all files or none: each goes to a temporary name beside its place first, and only when every one is complete
 * are they put in place, in one stretch that no signal and no other run of this program comes between; the next writer finishes what
 * a killed run had begun. A folder that is a link is followed. Returns the paths written, where they really are.
 *
 * @throws UserProblem when the folder cannot be made or written
 */
export async function writeFiles(folder: string, files: readonly OutputFile[]): Promise<string[]> {
  const mark = `${process.pid}-${++calls}`;
  const place = await realFolder(folder);
  const placed = files.map((file) => placeOf(place, file, mark));
  const cleanUp = () => {
    for (const { waiting } of placed) if (existsSync(waiting)) rmSync(waiting);
  };
  const release = onSignal(cleanUp);
  try {
    await mkdir(place, { recursive: true });
    await access(place, constants.W_OK);
    await finishUnfinished(place);
    await removeLeftWaiting(place);
    for (const file of placed) await writeWaiting(file);
    for (const { path } of placed) await refuseFolder(path);
    await alone(place, () => moveAll(place, placed.map(moveOf)));
  } catch (error) {
    cleanUp();
    throw new UserProblem('faults', `cannot write into ${folder}: ${reason(error)}. Nothing was written.`, {
      cause: error,
    });
  } finally {
    release();
  }
  return placed.filter(({ text }) => text !== null).map(({ path }) => path);
}

interface PlacedFile extends OutputFile {
  readonly path: string;
  /** Tells the files of this call from those of any other. */
  readonly mark: string;
  /** Where the text waits until all files are complete. */
  readonly waiting: string;
}

function placeOf(folder: string, file: OutputFile, mark: string): PlacedFile {
  return { ...file, mark, path: join(folder, file.name), waiting: join(folder, waitingName(file.name, mark)) };
}

/** Takes the temporary files away before a signal ends the program; the function returned stops listening. */
function onSignal(cleanUp: () => void): () => void {
  const listeners = Object.entries(SIGNALS).map(([signal, code]) => {
    const stop = () => {
      cleanUp();
      process.exit(code);
    };
    process.once(signal, stop);
    return () => process.removeListener(signal, stop);
  });
  return () => {
    for (const stopListening of listeners) stopListening();
  };
}

async function writeWaiting({ path, waiting, text }: PlacedFile): Promise<void> {
  if (text === null) return;
  await mkdir(dirname(path), { recursive: true });
  // A link or a file that waits there is not ours: it is taken away and never written through.
  await rm(waiting, { force: true });
  await writeFile(waiting, text, { flag: 'wx' });
}

/** A rename onto a folder would fail half way through the files: refuse before the first. */
async function refuseFolder(path: string): Promise<void> {
  const there = await stat(path).catch(() => null);
  if (there?.isDirectory()) throw Object.assign(new Error(path), { code: 'EISDIR' });
}

function moveOf({ name, text, mark }: PlacedFile): Move {
  return { waiting: text === null ? null : waitingName(name, mark), name };
}

function waitingName(name: string, mark: string): string {
  return `${name}.writing-${mark}`;
}

/**
 * The folder itself; of a link, what it leads to, so that the paths written name the place where the files are.
 *
 * @throws UserProblem when the link leads nowhere
 */
async function realFolder(folder: string): Promise<string> {
  const about = await lstat(folder).catch(() => null);
  if (!about?.isSymbolicLink()) return folder;
  const target = await realpath(folder).catch(() => null);
  if (target !== null) return target;
  throw new UserProblem(
    'faults',
    `${folder} is a link that leads nowhere: take it away or mend it. Nothing was written.`,
  );
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'this user may not write there',
  EPERM: 'this user may not write there',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EFBIG: 'a file would be larger than this account may write',
  EISDIR: 'a folder has the name of the file',
  EEXIST: 'a file has the name of the folder',
  ENOTDIR: 'a file has the name of the folder',
};

function reason(error: unknown): string {
  const code = (error as NodeJS.ErrnoException)?.code ?? '';
  return REASONS[code] ?? (error instanceof Error ? error.message : String(error));
}
