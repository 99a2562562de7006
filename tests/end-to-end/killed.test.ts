import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from './program.ts';

const season = mkdtempSync(join(tmpdir(), 'killed-'));
const week = join(season, 'week-01');
const out = join(week, 'out');
const SHEETS = ['game.csv', 'live.csv', 'opponent.csv', 'ours.csv'];
const read = (names: readonly string[]) => names.map((name) => readFileSync(join(week, name), 'utf8'));
let sheets: string[] = [];

/** Forty snaps of the demo's sheets: small, and yet enough for every command that needs no calls. */
beforeAll(() => {
  mkdirSync(out, { recursive: true });
  const cut = (from: string) =>
    `${readFileSync(`data/demo/season/week-09/${from}`, 'utf8').split('\n').slice(0, 41).join('\n')}\n`;
  for (const name of SHEETS)
    writeFileSync(join(week, name), cut(name === 'opponent.csv' ? 'opponent-latest.csv' : name));
  sheets = read(SHEETS);
  expect(run(['report', week]).code).toBe(0);
});
afterAll(() => rmSync(season, { recursive: true, force: true }));

/** Starts a command, holds it by another run's lock until all its files wait to be put in place, and kills it. */
async function killWhileWriting(command: string, files: number): Promise<void> {
  const lock = join(out, '.writing');
  writeFileSync(lock, '');
  const child = spawn(process.execPath, [resolve('dist/cli.js'), command, week], { stdio: 'ignore' });
  const ended = new Promise((done) => child.once('exit', done));
  while (waiting().length < files && child.exitCode === null) {
    utimesSync(lock, new Date(), new Date());
    await setTimeout(10);
  }
  child.kill('SIGKILL');
  await ended;
  rmSync(lock);
}

const waiting = () => readdirSync(out).filter((name) => name.includes('.writing-'));

describe('a run that is killed outright', () => {
  it.each([
    [
      'report',
      6,
      ['report.html', 'report.json', 'call-sheet.html', 'tip-sheet.html', 'wristband.html', 'wristband.csv'],
    ],
    ['halftime', 2, ['halftime.html', 'halftime.json']],
    ['review', 3, ['review.html', 'review.json', 'season.html']],
  ] as const)(
    '%s leaves sheets and pages as they were, and the next run clears up',
    async (command, files, pages) => {
      const inOut = () => readdirSync(out).filter((name) => !name.includes('.writing'));
      const before = inOut();
      const kept = before.map((name) => readFileSync(join(out, name), 'utf8'));
      await killWhileWriting(command, files);
      expect(waiting().length).toBe(files);
      expect(read(SHEETS)).toEqual(sheets);
      expect(inOut()).toEqual(before);
      expect(before.map((name) => readFileSync(join(out, name), 'utf8'))).toEqual(kept);
      expect(run([command, week]).code).toBe(0);
      expect(waiting()).toEqual([]);
      expect(inOut()).toEqual(expect.arrayContaining([...pages]));
      expect(read(SHEETS)).toEqual(sheets);
    },
    240_000,
  );
});
