import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** A season the desk knows: in the browser's own storage, or in a folder it was let into. */
export interface KnownSeason {
  readonly id: string;
  readonly name: string;
  readonly where: 'browser' | 'folder';
  readonly folder?: FileSystemDirectoryHandle;
}

interface DeskDatabase extends DBSchema {
  seasons: { key: string; value: KnownSeason };
  files: { key: [season: string, path: string]; value: Uint8Array };
  /** What was typed and is in no file yet, by season and path. */
  drafts: { key: string; value: unknown };
}

/** The desk's own database in this browser. */
export type Database = IDBPDatabase<DeskDatabase>;

/** Opens the database, making it the first time. */
export function openDatabase(): Promise<Database> {
  return openDB<DeskDatabase>('pressure-plan', 1, {
    upgrade: (made) => {
      made.createObjectStore('seasons', { keyPath: 'id' });
      made.createObjectStore('files');
      made.createObjectStore('drafts');
    },
  });
}

/** The range of all files of a season. */
export function filesOfSeason(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id, ''], [id, '\uffff']);
}

/** The range of everything typed for a season and not in a file. */
export function draftsOfSeason(id: string): IDBKeyRange {
  return IDBKeyRange.bound(`${id}/`, `${id}/\uffff`);
}

/** Keeps a draft; what was handed over is kept also when the page goes away before it hears so. */
export async function putAtOnce(database: Database, key: string, draft: unknown): Promise<void> {
  const writing = database.transaction('drafts', 'readwrite');
  const put = writing.store.put(draft, key);
  writing.commit();
  await Promise.all([put, writing.done]);
}
