import { type ReadPlace, unreadWords } from './near-name.ts';
import type { FolderEntry, SeasonFiles, SeasonWeek } from './store.ts';

/**
 * The files of a week, its season and the archive that are not read although their names say that they were meant to be,
 * each with what to do, in the order of the folders and names.
 */
export async function unreadFiles({ files, week }: SeasonWeek): Promise<readonly string[]> {
  return [
    ...(await unreadIn(files, week, 'week')),
    ...(await unreadIn(files, '', 'season')),
    ...(await unreadIn(files, 'archive', 'archive')),
  ];
}

async function unreadIn(files: SeasonFiles, folder: string, place: ReadPlace): Promise<string[]> {
  const entries = await files.list(folder).catch(() => []);
  const shown = (name: string) => files.shown(folder === '' ? name : `${folder}/${name}`);
  const capital = place === 'season' ? await capitalArchive(files, entries) : [];
  const lines = entries.flatMap((entry) => {
    const words = unreadWords(entry, place);
    return words === null ? [] : [`${shown(entry.name)} is not read: ${words}`];
  });
  return [...capital, ...lines];
}

/** Where the disk takes large letters for small ones, an Archive is the archive; elsewhere it is not. */
async function capitalArchive(files: SeasonFiles, entries: readonly FolderEntry[]): Promise<string[]> {
  const capital = entries.find(({ name, isFolder }) => isFolder && /^archive$/i.test(name) && name !== 'archive');
  if (!capital || (await files.list('archive')).length > 0) return [];
  return [`${files.shown(capital.name)} is not read: call it archive, in small letters`];
}
