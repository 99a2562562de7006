import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoSeason, run } from './program.ts';

let season = '';
const folder = mkdtempSync(join(tmpdir(), 'backtest-'));
beforeAll(() => {
  season = demoSeason();
});
afterAll(() => {
  for (const made of [season, folder]) rmSync(made, { recursive: true, force: true });
});

describe('pressure-plan backtest', () => {
  it('replays the demo week: tables on standard output, the rest on standard error, the same twice', () => {
    const week = join(season, 'week-09');
    const first = run(['backtest', week]);
    expect(first.code, first.note).toBe(0);
    expect(first.out).toContain('4 games of 1 offense forecast');
    expect(first.out).toMatch(/^the chain before the look, with the archive/m);
    expect(first.note).toBe(`Replaying ${week}\n`);
    expect(run(['backtest', week]).out).toBe(first.out);
  });

  it('replays every offense of an archive folder and writes what it said of each snap', () => {
    const file = join(folder, 'said.csv');
    const ended = run(['backtest', join(season, 'archive'), '--json', '--predictions', file]);
    expect(ended.code, ended.note).toBe(0);
    const result = JSON.parse(ended.out);
    expect(result).toMatchObject({ offenses: 6, games: 24, leftOneOut: 24, withArchive: 24 });
    const judged = result.targets.filter(({ snaps }: { snaps: number }) => snaps > 0);
    expect(readFileSync(file, 'utf8').trimEnd().split('\r\n')).toHaveLength(1 + judged.length * result.snaps);
  });

  it('ends with 2 on wrong usage and with 1 on film that cannot be judged, and writes nothing', () => {
    const file = join(folder, 'never.csv');
    expect(run(['backtest']).code).toBe(2);
    expect(run(['backtest', join(season, 'nowhere')]).code).toBe(2);
    expect(run(['backtest', season, '--games', 'none']).code).toBe(2);
    const unwritable = run(['backtest', join(season, 'week-09'), '--predictions', join(folder, 'no', 'such.csv')]);
    expect(unwritable.code).toBe(2);
    expect(unwritable.note).toContain('there is no folder');
    const single = join(folder, 'single.csv');
    writeFileSync(single, 'game,down,to_go,ball_on,play_kind\ng1,1,10,own 35,run\n');
    const ended = run(['backtest', single, '--predictions', file]);
    expect(ended.code).toBe(1);
    expect(ended.note).toContain('no offense has two games');
    expect(existsSync(file)).toBe(false);
  });
});
