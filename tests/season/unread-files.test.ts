import { cpSync, existsSync, mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { check } from '../../src/commands/check.ts';
import { diskWeek } from '../../src/commands/disk-season.ts';
import { halftime } from '../../src/commands/halftime.ts';
import { review } from '../../src/commands/review.ts';
import { readSeasonFolder } from '../../src/season/season-folder.ts';
import { unreadFiles } from '../../src/season/unread-files.ts';

const season = mkdtempSync(join(tmpdir(), 'unread-'));
const week = join(season, 'week-09');
beforeAll(() => cpSync('data/demo/season', season, { recursive: true, filter: (path) => !/[\\/]out$/.test(path) }));
afterAll(() => rmSync(season, { recursive: true }));

const said: string[] = [];
const terminal = {
  out: (text: string) => void said.push(text),
  note: (text: string) => void said.push(text),
  progress: () => {},
  today: '2026-10-18',
};

describe('files that are not read', () => {
  it('are none in the demo season', async () => expect(await unreadFiles(diskWeek(week))).toEqual([]));

  it('are named by check, and the settings in them do nothing', async () => {
    renameSync(join(week, 'week.yaml'), join(week, 'week.yml'));
    const code = await check(week, {}, terminal);
    renameSync(join(week, 'week.yml'), join(week, 'week.yaml'));
    expect(said.join('\n')).toMatch(/^warning {2}.*week-09.week\.yml is not read: .*week\.yaml; call it that$/m);
    expect(code).toBe(0);
  });

  it('are named where nothing else could be read', async () => {
    for (const [name, wrong, attempt] of [
      ['live.csv', 'liv.csv', () => halftime(week, {}, terminal)],
      ['game.csv', 'gmae.csv', () => review(week, {}, terminal)],
    ] as const) {
      renameSync(join(week, name), join(week, wrong));
      await expect(attempt()).rejects.toThrow(new RegExp(`${wrong} is not read`));
      renameSync(join(week, wrong), join(week, name));
    }
    for (const name of ['earlier', 'latest'])
      renameSync(join(week, `opponent-${name}.csv`), join(week, `oponent-${name}.csv`));
    await expect(readSeasonFolder(diskWeek(week))).rejects.toThrow(/oponent-earlier.csv is not read: call it opponent/);
  });

  it('an Archive is named where the disk tells large letters from small ones', async () => {
    renameSync(join(season, 'archive'), join(season, 'Archive'));
    const named = (await unreadFiles(diskWeek(week))).some((line) =>
      line.includes('call it archive, in small letters'),
    );
    expect(named).toBe(!existsSync(join(season, 'archive')));
  });

  it('an empty folder has none', async () => {
    const empty = mkdtempSync(join(tmpdir(), 'unread-'));
    writeFileSync(join(empty, 'notes.txt'), '');
    mkdirSync(join(empty, 'week-01'), { recursive: true });
    expect(await unreadFiles(diskWeek(join(empty, 'week-01')))).toEqual([]);
    rmSync(empty, { recursive: true });
  });
});
