import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { CUT, quoted, quotedRuns } from '../../scripts/readme/quoted-run.ts';
import { run } from './program.ts';

const runs = quotedRuns(readFileSync('README.md', 'utf8'), 'A season, week by week');
const folder = mkdtempSync(join(tmpdir(), 'readme-'));
const demo = join(folder, 'pressure-plan-demo');
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What a terminal shows: standard output and standard error as they come. */
function shown(args: readonly string[]) {
  const command = ['-c', 'exec "$0" "$@" 2>&1', process.execPath, resolve('dist/cli.js'), ...args];
  return spawnSync('sh', command, { cwd: folder, encoding: 'utf8', maxBuffer: 2 ** 28 });
}

/** Every file of a season but what the tool writes, with its contents, as one number. */
function coachFiles(season: string): string {
  const hash = createHash('sha256');
  const names = existsSync(season) ? readdirSync(season, { recursive: true, withFileTypes: true }) : [];
  const files = names.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  for (const file of files.filter((path) => !/[\\/]out[\\/]/.test(path)).sort()) {
    hash.update(file).update(readFileSync(file));
  }
  return hash.digest('hex');
}

/** Figures move with the models; the sentence round them must not. `npx tsx scripts/readme-season.ts` quotes again. */
function withoutNumbers(line: string | undefined): string {
  return (line ?? '').replaceAll(/[\d.%]+/g, '#');
}

describe('the season of the README', () => {
  it('goes from a new season to the third review and quotes every command of the week', () => {
    const commands = new Set(runs.map(({ args }) => args[0]));
    for (const command of ['new', 'demo', 'check', 'tendency', 'report', 'script', 'halftime', 'review', 'agree'])
      expect([...commands], command).toContain(command);
    expect(runs.at(-1)?.args).toEqual(['review', 'pressure-plan-demo/week-09']);
    expect(run(['--version']).code).toBe(0);
  });

  it.each(runs)(
    '$args prints what is quoted and leaves the coach’s files as they were',
    ({ args, lines }) => {
      const before = coachFiles(demo);
      const { status, stdout } = shown(args);
      expect(status, stdout.slice(-2000)).toBe(0);
      const printed = quoted(stdout, lines.length).filter((line) => line !== CUT);
      expect(printed[0]).toBe(lines[0]);
      expect(withoutNumbers(printed[1])).toBe(withoutNumbers(lines[1]));
      expect(printed.length).toBe(lines.length);
      if (args[0] !== 'demo') expect(coachFiles(demo)).toBe(before);
    },
    240_000,
  );

  it('the third review has three games, and our film and the base rates grew by each finished week', () => {
    const read = (path: string) => JSON.parse(readFileSync(join(demo, path), 'utf8'));
    const season = readFileSync(join(demo, 'week-09/out/season.html'), 'utf8');
    for (const week of ['week-07', 'week-08', 'week-09']) expect(season).toContain(week);
    const snaps = (path: string) => readFileSync(join(demo, path), 'utf8').trim().split('\n').length - 1;
    const ours = snaps('ours.csv');
    expect(read('week-07/out/report.json').ownFilm.snaps).toBe(ours);
    expect(read('week-09/out/report.json').ownFilm.snaps).toBe(
      ours + snaps('week-07/ours.csv') + snaps('week-08/ours.csv'),
    );
    const archive = (week: string) => read(`${week}/out/review.json`).archive;
    const games = (week: string, opponent: string) =>
      archive(week).offenses.find((entry: { offense: string }) => entry.offense === opponent)?.games;
    expect(games('week-07', 'Brindle Hill')).toBeUndefined();
    expect(games('week-08', 'Brindle Hill')).toBe(5);
    expect(games('week-09', 'Tamarack Valley')).toBe(5);
  });
});
