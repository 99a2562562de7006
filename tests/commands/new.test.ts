import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { newSeason } from '../../src/commands/new.ts';

const home = mkdtempSync(join(tmpdir(), 'new-'));
const season = join(home, 'season');
const said: string[] = [];
const terminal = { out: () => undefined, note: (line: string) => said.push(line), progress: () => undefined };
const make = (folder: string, week: string) =>
  newSeason(folder, { week }, { ...terminal, today: '2026-10-01' } as never);

beforeAll(() => make(season, '7'));
afterAll(() => rmSync(home, { recursive: true }));

describe('pressure-plan new', () => {
  it('makes a season, and a further week in a season that is there', async () => {
    writeFileSync(join(season, 'defense.yaml'), 'his own');
    expect(await make(season, '8')).toBe(0);
    expect(readdirSync(season).sort()).toEqual(['defense.yaml', 'examples', 'ours.csv', 'week-07', 'week-08']);
    expect(readdirSync(join(season, 'week-08')).sort()).toEqual(['opponent.csv', 'week.yaml']);
    expect(readFileSync(join(season, 'defense.yaml'), 'utf8')).toBe('his own');
    expect(said.at(-1)).toContain(join('week-08', 'opponent.csv'));
  });

  it('replaces no week and fills no foreign folder', async () => {
    writeFileSync(join(season, 'week-07', 'week.yaml'), 'his own');
    await expect(make(season, '7')).rejects.toThrow(/week-07 is there already; nothing was made/);
    expect(readFileSync(join(season, 'week-07', 'week.yaml'), 'utf8')).toBe('his own');
    const other = join(home, 'other');
    await make(other, '1');
    rmSync(join(other, 'defense.yaml'));
    rmSync(join(other, 'week-01'), { recursive: true });
    await expect(make(other, '1')).rejects.toThrow(/is not empty; nothing was made/);
    await expect(make(join(home, 'new'), 'x')).rejects.toThrow(/--week takes a number/);
  });
});
