import type { FolderEntry, SeasonFiles } from './store.ts';

/** The files of a season by their paths. */
export type FileSet = ReadonlyMap<string, Uint8Array>;

/** A season held in memory; `name` is the season folder's own, which its paths are shown under. */
export function memoryFiles(files: FileSet, name: string): SeasonFiles {
  return {
    list: async (folder) => entriesOf(files.keys(), folder),
    read: async (path) => files.get(path) ?? null,
    shown: (path) => `${name}/${path}`,
  };
}

/** What a folder holds, in name order, seen from the paths of all files. */
export function entriesOf(paths: Iterable<string>, folder: string): readonly FolderEntry[] {
  const start = folder === '' ? '' : `${folder}/`;
  const found = new Map<string, FolderEntry>();
  for (const path of paths) {
    if (!path.startsWith(start)) continue;
    const [name = '', ...rest] = path.slice(start.length).split('/');
    found.set(name, { name, isFolder: rest.length > 0 });
  }
  return [...found.values()].sort((left, right) => (left.name < right.name ? -1 : 1));
}

/** Every file of a season, in one map; the desk itself and names that begin with a dot are left out. */
export async function wholeSeason(files: SeasonFiles): Promise<FileSet> {
  const found = new Map<string, Uint8Array>();
  await gather(files, '', found);
  return found;
}

async function gather(files: SeasonFiles, folder: string, found: Map<string, Uint8Array>): Promise<void> {
  for (const { name, isFolder } of await files.list(folder)) {
    if (name.startsWith('.') || name === 'desk.html') continue;
    const path = folder === '' ? name : `${folder}/${name}`;
    if (isFolder) {
      await gather(files, path, found);
      continue;
    }
    const bytes = await files.read(path);
    if (bytes !== null) found.set(path, bytes);
  }
}
