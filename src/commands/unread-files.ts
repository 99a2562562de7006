import { readdir, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { type FolderEntry, type ReadPlace, unreadWords } from './near-name.ts';

/**
 * The files of a week, its season and the archive that are not read although their names say that they were meant to be,
 * each with what to do, in the order of the folders and names.
 */
export async function unreadFiles(weekFolder: string): Promise<readonly string[]> {
  const season = join(weekFolder, '..');
  return [
    ...(await unreadIn(weekFolder, 'week')),
    ...(await unreadIn(season, 'season')),
    ...(await unreadIn(join(season, 'archive'), 'archive')),
  ];
}

async function unreadIn(folder: string, place: ReadPlace): Promise<string[]> {
  const entries = await entriesIn(folder);
  const capital = place === 'season' ? await capitalArchive(folder, entries) : [];
  const lines = entries.flatMap((entry) => {
    const words = unreadWords(entry, place);
    return words === null ? [] : [`${join(folder, entry.name)} is not read: ${words}`];
  });
  return [...capital, ...lines];
}

/** Where the disk takes large letters for small ones, an Archive is the archive; elsewhere it is not. */
async function capitalArchive(folder: string, entries: readonly FolderEntry[]): Promise<string[]> {
  const capital = entries.find(({ name, isFolder }) => isFolder && /^archive$/i.test(name) && name !== 'archive');
  if (!capital || (await isThere(join(folder, 'archive')))) return [];
  return [`${join(folder, capital.name)} is not read: call it archive, in small letters`];
}

async function entriesIn(folder: string): Promise<FolderEntry[]> {
  const entries = await readdir(resolve(folder), { withFileTypes: true }).catch(() => []);
  return entries
    .map((entry) => ({ name: entry.name, isFolder: entry.isDirectory() }))
    .sort((left, right) => (left.name < right.name ? -1 : 1));
}

async function isThere(path: string): Promise<boolean> {
  return (await stat(resolve(path)).catch(() => null)) !== null;
}
