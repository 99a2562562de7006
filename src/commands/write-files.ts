import { access, constants, mkdir, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { CommandProblem } from './exit-code.ts';

/** A file to be written, by its name within the folder. */
export interface OutputFile {
  readonly name: string;
  readonly text: string;
}

/**
 * Writes all files or none: each goes to a temporary name beside its place first, and only when every one is complete
 * are they renamed. Returns the paths written.
 *
 * @throws CommandProblem when the folder cannot be made or written
 */
export async function writeFiles(folder: string, files: readonly OutputFile[]): Promise<string[]> {
  const mark = `.writing-${process.pid}`;
  const placed = files.map((file) => ({
    ...file,
    path: join(folder, file.name),
    waiting: `${join(folder, file.name)}${mark}`,
  }));
  const cleanUp = () => Promise.allSettled(placed.map(({ waiting }) => rm(waiting, { force: true })));
  const stop = () => void cleanUp().finally(() => process.exit(130));
  process.once('SIGINT', stop);
  try {
    await mkdir(folder, { recursive: true });
    await access(folder, constants.W_OK);
    for (const { path, waiting, text } of placed) {
      await mkdir(dirname(path), { recursive: true });
      await writeFile(waiting, text);
    }
    for (const { path } of placed) await refuseFolder(path);
    for (const { path, waiting } of placed) await rename(waiting, path);
  } catch (error) {
    await cleanUp();
    throw new CommandProblem('faults', `cannot write into ${folder}: ${reason(error)}. Nothing was written.`, {
      cause: error,
    });
  } finally {
    process.removeListener('SIGINT', stop);
  }
  return placed.map(({ path }) => path);
}

/** A rename onto a folder would fail half way through the files: refuse before the first. */
async function refuseFolder(path: string): Promise<void> {
  const there = await stat(path).catch(() => null);
  if (there?.isDirectory()) throw Object.assign(new Error(path), { code: 'EISDIR' });
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'this user may not write there',
  EPERM: 'this user may not write there',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EISDIR: 'a folder has the name of the file',
  EEXIST: 'a file has the name of the folder',
  ENOTDIR: 'a file has the name of the folder',
};

function reason(error: unknown): string {
  const code = (error as NodeJS.ErrnoException)?.code ?? '';
  return REASONS[code] ?? (error instanceof Error ? error.message : String(error));
}
