import { lstatSync, readdirSync, readFileSync, statSync } from 'node:fs';
import type { FolderEntry } from '../season/store.ts';
import { UserProblem } from '../season/user-problem.ts';

// A command has nothing else to do while it reads, and a read that is handed to other threads and back costs several
// times the processor time of one that is waited for.

/**
 * The bytes of a file. `shown` is its path as the user would name it.
 *
 * @throws UserProblem when it is not a file or cannot be read: a sheet that is there is never left out in silence
 */
export async function bytesOf(path: string, shown: string): Promise<Uint8Array> {
  try {
    if (statSync(path).isFile()) return readFileSync(path);
  } catch (error) {
    throw cannotRead(shown, error);
  }
  throw new UserProblem('faults', `${shown} is not a file`);
}

/** Whether anything has that name, a link that leads nowhere too. */
export function isThere(path: string): boolean {
  try {
    return lstatSync(path, { throwIfNoEntry: false }) !== undefined;
  } catch (error) {
    // A file stands where the folder belongs.
    if (isAbsent(error)) return false;
    throw error;
  }
}

/**
 * What a folder holds, in name order; nothing when it is not there or is a file.
 *
 * @throws UserProblem when it is there and cannot be read
 */
export async function entriesIn(folder: string, shown: string): Promise<FolderEntry[]> {
  try {
    return readdirSync(folder, { withFileTypes: true })
      .map((entry) => ({ name: entry.name, isFolder: entry.isDirectory() }))
      .sort((left, right) => (left.name < right.name ? -1 : 1));
  } catch (error) {
    if (isAbsent(error)) return [];
    throw cannotRead(shown, error);
  }
}

/** Whether the error says that there is nothing of that name. */
function isAbsent(error: unknown): boolean {
  const code = (error as NodeJS.ErrnoException | null)?.code ?? '';
  return code === 'ENOENT' || code === 'ENOTDIR';
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'this user may not read it',
  EPERM: 'this user may not read it',
  ENOENT: 'it leads to a file that is not there',
  ELOOP: 'it is a link that leads to itself',
  EISDIR: 'it is a folder',
  ERR_FS_FILE_TOO_LARGE: 'it is larger than 2 GiB',
};

function cannotRead(shown: string, error: unknown): UserProblem {
  const { code = '', message } = error as NodeJS.ErrnoException;
  return new UserProblem('faults', `cannot read ${shown}: ${REASONS[code] ?? message}`, { cause: error });
}
