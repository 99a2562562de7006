import type { FileChange, FolderEntry, SeasonStore } from '../../season/store.ts';
import { UserProblem } from '../../season/user-problem.ts';
import { ChangedMeanwhile } from './changed-meanwhile.ts';
import { bytesOf, sameBytes } from './same-bytes.ts';

type Folder = FileSystemDirectoryHandle;

/**
 * A season in a folder that the browser lets us read and write. Every file is written beside its place first; only when
 * all are complete are they put in place, and when one cannot be, those before it get back what they held.
 */
export function folderStore(root: Folder): SeasonStore {
  return {
    list: (folder) => listFolder(root, folder),
    read: (path) => readFile(root, path),
    shown: (path) => `${root.name}/${path}`,
    write: (changes) => writeAll(root, changes),
  };
}

async function listFolder(root: Folder, path: string): Promise<FolderEntry[]> {
  const folder = await folderAt(root, namesOf(path));
  if (folder === null) return [];
  const found: FolderEntry[] = [];
  for await (const [name, entry] of folder as Folder & AsyncIterable<[string, FileSystemHandle]>)
    found.push({ name, isFolder: entry.kind === 'directory' });
  return found.sort((left, right) => (left.name < right.name ? -1 : 1));
}

async function readFile(root: Folder, path: string): Promise<Uint8Array | null> {
  const file = await fileAt(root, path, false);
  if (file === null) return null;
  try {
    return new Uint8Array(await (await file.getFile()).arrayBuffer());
  } catch (error) {
    throw folderProblem(error);
  }
}

interface Waiting {
  readonly change: FileChange;
  readonly before: Uint8Array | null;
  readonly stream: FileSystemWritableFileStream | null;
}

async function writeAll(root: Folder, changes: readonly FileChange[]): Promise<void> {
  const waiting: Waiting[] = [];
  const done: Waiting[] = [];
  try {
    for (const change of changes) waiting.push(await prepare(root, change));
    const changed = waiting.filter(({ change, before }) => change.was !== undefined && !sameBytes(before, change.was));
    if (changed.length > 0) throw new ChangedMeanwhile(changed.map(({ change }) => change.name));
    for (const one of waiting) {
      await putInPlace(root, one);
      done.push(one);
    }
  } catch (error) {
    for (const one of waiting) await takeBack(root, one, done.includes(one)).catch(() => undefined);
    throw folderProblem(error);
  }
}

async function prepare(root: Folder, change: FileChange): Promise<Waiting> {
  const before = await readFile(root, change.name);
  if (change.text === null) return { change, before, stream: null };
  if (change.was !== undefined && !sameBytes(before, change.was)) return { change, before, stream: null };
  try {
    const stream = await openToWrite(root, change.name);
    await stream.write(bytesOf(change.text) as Uint8Array<ArrayBuffer>);
    return { change, before, stream };
  } catch (error) {
    if (before === null) await removeFile(root, change.name);
    throw error;
  }
}

async function openToWrite(root: Folder, path: string): Promise<FileSystemWritableFileStream> {
  const file = await fileAt(root, path, true);
  if (file === null) throw new DOMException(path, 'NotFoundError');
  return file.createWritable();
}

async function putInPlace(root: Folder, { change, stream }: Waiting): Promise<void> {
  if (stream !== null) return stream.close();
  if (change.text === null) await removeFile(root, change.name);
}

/** What was there before is there again; a file is made empty before it is written, and a new one goes. */
async function takeBack(root: Folder, { change, before, stream }: Waiting, isDone: boolean): Promise<void> {
  if (!isDone) await stream?.abort();
  if (before === null && stream !== null) return removeFile(root, change.name);
  if (before === null || !isDone) return;
  const writing = await openToWrite(root, change.name);
  await writing.write(before as Uint8Array<ArrayBuffer>);
  await writing.close();
}

async function removeFile(root: Folder, path: string): Promise<void> {
  const names = namesOf(path);
  const folder = await folderAt(root, names.slice(0, -1));
  await folder?.removeEntry(names.at(-1) ?? '').catch(() => undefined);
}

function namesOf(path: string): string[] {
  return path === '' ? [] : path.split('/');
}

async function folderAt(root: Folder, names: readonly string[], create = false): Promise<Folder | null> {
  let folder = root;
  for (const name of names) {
    const next = await folder.getDirectoryHandle(name, { create }).catch(absentOr(null));
    if (next === null) return null;
    folder = next;
  }
  return folder;
}

async function fileAt(root: Folder, path: string, create: boolean): Promise<FileSystemFileHandle | null> {
  const names = namesOf(path);
  const folder = await folderAt(root, names.slice(0, -1), create);
  if (folder === null) return null;
  return folder.getFileHandle(names.at(-1) ?? '', { create }).catch(absentOr(null));
}

/** Takes "not there" for an answer and every other failure for a problem. */
function absentOr<Absent>(absent: Absent): (error: unknown) => Absent {
  return (error) => {
    const { name = '' } = error as Partial<DOMException>;
    if (name === 'NotFoundError' || name === 'TypeMismatchError') return absent;
    throw folderProblem(error);
  };
}

const REASONS: Readonly<Record<string, string>> = {
  NotAllowedError: 'the browser no longer lets this page into the folder; open the folder again',
  QuotaExceededError: 'the disk is full',
  NoModificationAllowedError: 'another program holds the file',
  NotFoundError: 'the folder is gone',
};

function folderProblem(error: unknown): Error {
  if (error instanceof UserProblem) return error;
  const { name = '', message = String(error) } = error as Partial<DOMException>;
  return new UserProblem('faults', `The folder cannot be used: ${REASONS[name] ?? message}.`, { cause: error });
}
