import type { KnownSeason } from './database.ts';

/** Lets the coach pick a folder that may be written; null when he picks none. */
export function pickFolder(): Promise<FileSystemDirectoryHandle | null> {
  const picker = window as unknown as {
    readonly showDirectoryPicker: (options: object) => Promise<FileSystemDirectoryHandle>;
  };
  return picker.showDirectoryPicker({ mode: 'readwrite' }).catch(() => null);
}

/**
 * Asks to be let into a folder that was picked earlier.
 *
 * @throws Error when the browser was not let in
 */
export async function askForFolder(folder: FileSystemDirectoryHandle): Promise<void> {
  const asked = folder as unknown as { readonly requestPermission?: (options: object) => Promise<string> };
  const answer = (await asked.requestPermission?.({ mode: 'readwrite' })) ?? 'granted';
  if (answer !== 'granted') throw new Error('The browser was not let into the folder; nothing was opened.');
}

/** The folder as it is known already; another of the same name has a number behind it. */
export async function knownFolder(
  seasons: readonly KnownSeason[],
  folder: FileSystemDirectoryHandle,
): Promise<KnownSeason> {
  for (const season of seasons)
    if (season.folder !== undefined && (await season.folder.isSameEntry(folder))) return { ...season, folder };
  const taken = new Set(seasons.map(({ id }) => id));
  let id = `folder ${folder.name}`;
  for (let more = 2; taken.has(id); more++) id = `folder ${folder.name} ${more}`;
  return { id, name: folder.name, where: 'folder', folder };
}
