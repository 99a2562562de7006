import { describe, expect, it } from 'vitest';
import { folderStore } from '../../src/desk/store/folder-store.ts';

/** A folder as a browser gives it (WHATWG File System), in memory; `fails` names a file that cannot be closed. */
function fakeFolder(files: Map<string, string>, fails: { name: string } = { name: '' }) {
  const missing = () => Object.assign(new Error('not there'), { name: 'NotFoundError' });
  const file = (path: string) => ({
    getFile: async () => new Blob([files.get(path) ?? '']),
    createWritable: async () => {
      const pieces: Uint8Array[] = [];
      return {
        write: async (bytes: Uint8Array) => void pieces.push(bytes),
        close: async () => {
          if (path.endsWith(fails.name) && fails.name !== '') {
            throw Object.assign(new Error('gone'), { name: 'NotAllowedError' });
          }
          files.set(path, Buffer.concat(pieces).toString());
        },
        abort: async () => undefined,
      };
    },
  });
  const folder = (start: string): FileSystemDirectoryHandle => {
    const within = () =>
      [...files.keys()].filter((path) => path.startsWith(start)).map((path) => path.slice(start.length));
    return {
      name: 'season',
      getDirectoryHandle: async (name: string, { create = false } = {}) => {
        if (!create && !within().some((path) => path.startsWith(`${name}/`))) throw missing();
        return folder(`${start}${name}/`);
      },
      getFileHandle: async (name: string, { create = false } = {}) => {
        if (!files.has(start + name) && !create) throw missing();
        return file(start + name);
      },
      removeEntry: async (name: string) => void files.delete(start + name),
      async *[Symbol.asyncIterator]() {
        const names = new Map(within().map((path) => [path.split('/')[0] ?? '', path.includes('/')]));
        for (const [name, isFolder] of names) yield [name, { kind: isFolder ? 'directory' : 'file' }];
      },
    } as never;
  };
  return folder('');
}

const bytes = (text: string) => new TextEncoder().encode(text);

describe('a folder the browser lets us into', () => {
  const files = () =>
    new Map([
      ['defense.yaml', 'old'],
      ['week-01/opponent.csv', 'a'],
    ]);

  it('lists and reads what is there, and nothing where nothing is', async () => {
    const store = folderStore(fakeFolder(files()));
    expect(await store.list('')).toEqual([
      { name: 'defense.yaml', isFolder: false },
      { name: 'week-01', isFolder: true },
    ]);
    expect(await store.list('archive')).toEqual([]);
    expect(await store.read('week-01/opponent.csv')).toEqual(bytes('a'));
    expect(await store.read('week-02/opponent.csv')).toBeNull();
  });

  it('overwrites nothing that changed meanwhile, and then writes none of the files', async () => {
    const disk = files();
    const store = folderStore(fakeFolder(disk));
    const change = [
      { name: 'week-01/out/report.json', text: '{}' },
      { name: 'week-01/opponent.csv', text: 'mine', was: bytes('as I saw it') },
    ];
    await expect(store.write(change)).rejects.toThrow(/week-01\/opponent.csv changed meanwhile/);
    expect([...disk]).toEqual([...files()]);
  });

  it('gives back what was there when the permission is withdrawn half way', async () => {
    const disk = files();
    const store = folderStore(fakeFolder(disk, { name: 'opponent.csv' }));
    const change = [
      { name: 'defense.yaml', text: 'new', was: bytes('old') },
      { name: 'week-01/opponent.csv', text: 'new', was: bytes('a') },
    ];
    await expect(store.write(change)).rejects.toThrow(/no longer lets this page into the folder/);
    expect([...disk]).toEqual([...files()]);
  });
});
