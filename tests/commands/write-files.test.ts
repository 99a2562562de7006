import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { writeFiles } from '../../src/commands/write-files.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plan-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('writeFiles', () => {
  it('writes every file and leaves no temporary name behind', async () => {
    const paths = await writeFiles(join(folder, 'out'), [
      { name: 'a.txt', text: 'one' },
      { name: 'b/c.txt', text: 'two' },
    ]);
    expect(paths.map((path) => readFileSync(path, 'utf8'))).toEqual(['one', 'two']);
    expect(readdirSync(join(folder, 'out')).sort()).toEqual(['a.txt', 'b']);
  });

  it('writes nothing when one file cannot be written, and keeps what was there', async () => {
    writeFileSync(join(folder, 'a.txt'), 'before');
    writeFileSync(join(folder, 'b'), 'a file where a folder is needed');
    const attempt = writeFiles(folder, [
      { name: 'a.txt', text: 'after' },
      { name: 'b/c.txt', text: 'two' },
    ]);
    await expect(attempt).rejects.toThrow(/Nothing was written/);
    expect(readFileSync(join(folder, 'a.txt'), 'utf8')).toBe('before');
    expect(readdirSync(folder).sort()).toEqual(['a.txt', 'b']);
  });

  it('replaces no file when the place of another is a folder', async () => {
    writeFileSync(join(folder, 'a.txt'), 'before');
    mkdirSync(join(folder, 'b.txt'));
    await expect(
      writeFiles(folder, [
        { name: 'a.txt', text: 'after' },
        { name: 'b.txt', text: 'two' },
      ]),
    ).rejects.toThrow(/Nothing was written/);
    expect(readFileSync(join(folder, 'a.txt'), 'utf8')).toBe('before');
  });

  it('takes away a file of an earlier run that has no text now, and does not name it', async () => {
    writeFileSync(join(folder, 'old.csv'), 'before');
    expect(
      await writeFiles(folder, [
        { name: 'a.txt', text: 'one' },
        { name: 'old.csv', text: null },
      ]),
    ).toEqual([join(folder, 'a.txt')]);
    expect(readdirSync(folder)).toEqual(['a.txt']);
  });

  it('never mixes the files of several calls at once', async () => {
    const names = ['a', 'b', 'c'];
    const write = (text: string) =>
      writeFiles(
        folder,
        names.map((name) => ({ name, text })),
      );
    await Promise.all(Array.from({ length: 12 }, (_, i) => write(`run ${i} ${'x'.repeat(i * 20_000)}`)));
    expect(new Set(names.map((name) => readFileSync(join(folder, name), 'utf8'))).size).toBe(1);
    expect(readdirSync(folder).sort()).toEqual(names);
  });

  it('waits for the lock of another run, and takes one away that a killed run left', async () => {
    const lock = join(folder, '.writing');
    writeFileSync(lock, '');
    const written = writeFiles(folder, [{ name: 'a.txt', text: 'one' }]);
    while (!readdirSync(folder).some((name) => name.startsWith('a.txt.writing'))) await setTimeout(5);
    await setTimeout(60);
    expect(existsSync(join(folder, 'a.txt'))).toBe(false);
    const longAgo = new Date(Date.now() - 3_600_000);
    utimesSync(lock, longAgo, longAgo);
    await written;
    expect(readdirSync(folder)).toEqual(['a.txt']);
  });

  it.skipIf(process.platform === 'win32')(
    'follows a folder that is a link openly: the paths name where the files are',
    async () => {
      const real = join(realpathSync(folder), 'real');
      mkdirSync(real);
      symlinkSync(real, join(folder, 'out'));
      expect(await writeFiles(join(folder, 'out'), [{ name: 'a.txt', text: 'one' }])).toEqual([join(real, 'a.txt')]);
      expect(readFileSync(join(real, 'a.txt'), 'utf8')).toBe('one');
      expect(lstatSync(join(folder, 'out')).isSymbolicLink()).toBe(true);
    },
  );

  it.skipIf(process.platform === 'win32')('refuses a link that leads nowhere', async () => {
    symlinkSync(join(folder, 'gone'), join(folder, 'out'));
    await expect(writeFiles(join(folder, 'out'), [{ name: 'a.txt', text: 'one' }])).rejects.toThrow(
      /is a link that leads nowhere.*Nothing was written/,
    );
    expect(existsSync(join(folder, 'gone'))).toBe(false);
  });

  it('writes through no link that waits under the temporary name', async () => {
    const elsewhere = join(folder, 'elsewhere');
    writeFileSync(elsewhere, 'theirs');
    for (let call = 1; call < 40; call++) symlinkSync(elsewhere, join(folder, `a.txt.writing-${process.pid}-${call}`));
    await writeFiles(folder, [{ name: 'a.txt', text: 'ours' }]);
    expect(readFileSync(elsewhere, 'utf8')).toBe('theirs');
    expect(readFileSync(join(folder, 'a.txt'), 'utf8')).toBe('ours');
  });
});
