import { entriesOf } from '../../season/memory-files.ts';
import type { FileChange, SeasonStore } from '../../season/store.ts';
import { UserProblem } from '../../season/user-problem.ts';
import { ChangedMeanwhile } from './changed-meanwhile.ts';
import { type Database, filesOfSeason, type KnownSeason } from './database.ts';
import { bytesOf, sameBytes } from './same-bytes.ts';

/** A season in the browser's own storage; one transaction writes all files or none. */
export function browserStore(database: Database, { id, name }: KnownSeason): SeasonStore {
  return {
    list: async (folder) => {
      const keys = await database.getAllKeys('files', filesOfSeason(id));
      return entriesOf(
        keys.map(([, path]) => path),
        folder,
      );
    },
    read: async (path) => (await database.get('files', [id, path])) ?? null,
    shown: (path) => `${name}/${path}`,
    write: (changes) => writeAll(database, id, changes),
  };
}

async function writeAll(database: Database, id: string, changes: readonly FileChange[]): Promise<void> {
  const writing = database.transaction('files', 'readwrite', { durability: 'strict' });
  try {
    const read = async (path: string) => (await writing.store.get([id, path])) ?? null;
    await refuseChanged(changes, read);
    for (const { name, text } of changes) {
      if (text === null) await writing.store.delete([id, name]);
      else await writing.store.put(bytesOf(text), [id, name]);
    }
    await writing.done;
  } catch (error) {
    abort(writing);
    throw storageProblem(error);
  }
}

/** @throws ChangedMeanwhile naming every file that no longer holds what was last seen */
async function refuseChanged(
  changes: readonly FileChange[],
  read: (path: string) => Promise<Uint8Array | null>,
): Promise<void> {
  const changed: string[] = [];
  for (const { name, was } of changes) {
    if (was !== undefined && !sameBytes(await read(name), was)) changed.push(name);
  }
  if (changed.length > 0) throw new ChangedMeanwhile(changed);
}

function abort(writing: { readonly abort: () => void; readonly done: Promise<unknown> }): void {
  writing.done.catch(() => undefined);
  try {
    writing.abort();
  } catch {
    // It had ended already.
  }
}

/** A failed write in words; a full storage is the one a coach can mend. */
export function storageProblem(error: unknown): Error {
  if (error instanceof UserProblem) return error;
  const { name = '', message = String(error) } = error as Partial<DOMException>;
  const words = name === 'QuotaExceededError' ? 'this browser has no room left for Pressure Plan' : message;
  return new UserProblem('faults', `Not saved: ${words}.`, { cause: error });
}
