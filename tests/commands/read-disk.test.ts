import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { diskPlace, diskWeek } from '../../src/commands/disk-season.ts';
import { bytesOf, entriesIn } from '../../src/commands/read-disk.ts';
import { readOne, readSeasonFolder } from '../../src/season/season-folder.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'disk-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('bytesOf', () => {
  it.each([
    ['a folder', (path: string) => mkdirSync(path), 'shown is not a file'],
    ['a link that leads nowhere', (path: string) => symlinkSync('gone', path), 'leads to a file that is not there'],
    ['a link to itself', (path: string) => symlinkSync(path, path), 'link that leads to itself'],
  ])('says of %s in words why it cannot be read', async (_, make, words) => {
    const path = join(folder, 'x.csv');
    make(path);
    await expect(bytesOf(path, 'shown')).rejects.toMatchObject({
      kind: 'faults',
      message: expect.stringContaining(words),
    });
  });
});

describe('entriesIn', () => {
  it('knows no names in a folder that is absent or a file, in name order otherwise', async () => {
    for (const name of ['b', 'a']) writeFileSync(join(folder, name), '');
    expect(await entriesIn(folder, 'shown')).toEqual(['a', 'b'].map((name) => ({ name, isFolder: false })));
    expect(await entriesIn(join(folder, 'a'), 'shown')).toEqual([]);
    expect(await entriesIn(join(folder, 'none'), 'shown')).toEqual([]);
  });
});

describe('a season folder', () => {
  it('never leaves out a sheet in silence that is there and cannot be read', async () => {
    mkdirSync(join(folder, 'week-01'));
    mkdirSync(join(folder, 'archive'));
    writeFileSync(join(folder, 'week-01/opponent.csv'), 'game\n');
    symlinkSync('gone', join(folder, 'archive/one.csv'));
    await expect(readSeasonFolder(diskWeek(join(folder, 'week-01')))).rejects.toThrow(/cannot read .*archive.one\.csv/);
  });

  it('finds a settings file however its name is written', async () => {
    writeFileSync(join(folder, 'Week.YAML'), 'x');
    expect(await readOne(diskPlace(folder), '', 'week.yaml')).toMatchObject({ file: join(folder, 'Week.YAML') });
    expect(await readOne(diskPlace(folder), '', 'defense.yaml')).toBeNull();
  });
});
