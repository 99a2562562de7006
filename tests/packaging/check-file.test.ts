import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type * as z from 'zod';
import { weekSettingsSchema } from '../../src/game/week-settings.ts';
import { formationBookSchema } from '../../src/ingest/formation/formation-schema.ts';
import { profileSchema } from '../../src/ingest/profile.ts';
import { describeProblem } from '../../src/ingest/row-problem.ts';
import { readYaml } from '../../src/ingest/yaml-file.ts';

const root = mkdtempSync(join(tmpdir(), 'check-file-'));
const dist = join(root, 'dist');
const season = join(root, 'season');
const week = join(season, 'week-09');

beforeAll(() => {
  execFileSync('node', ['scripts/build.mjs', dist]);
  cpSync('data/demo/season', season, { recursive: true, filter: (path) => !/[\\/]out([\\/]|$)/.test(path) });
}, 120_000);
afterAll(() => rmSync(root, { recursive: true, force: true }));

const check = (folder: string) => {
  const { status, stdout, stderr } = spawnSync('node', [join(dist, 'cli.js'), 'check', folder], { encoding: 'utf8' });
  return { code: status, out: stdout, note: stderr };
};

/** The check with a file put into the season, which is taken away again. */
function checkWith(name: string, text: string) {
  const path = join(season, name);
  writeFileSync(path, text);
  const said = check(week);
  rmSync(path);
  return said;
}

/** What the full reading of the sources says of a file. */
function faultsOf(schema: z.ZodType, name: string, text: string): string {
  const reading = readYaml(text, schema, join(season, name));
  return reading.kind === 'problems' ? reading.problems.map(describeProblem).join('\n') : '';
}

describe('the check, a file of its own in the built program', () => {
  it('loads no other file but the exit codes', () => {
    const code = readFileSync(join(dist, 'check.js'), 'utf8');
    const loaded = [...code.matchAll(/(?:^|[;}\n])import\s*(?:[^;'"()]*?from)?\s*["']([^"']+)["']/g)].map(
      ([, from]) => from,
    );
    expect(new Set(loaded.filter((from) => !from?.startsWith('node:')))).toEqual(new Set(['./user-problem.js']));
  });

  it('checks the demo week', () => {
    const { code, out } = check(week);
    expect(code).toBe(0);
    const rows = ['earlier', 'latest'].map((part) => readFileSync(join(week, `opponent-${part}.csv`), 'utf8').trim());
    const snaps = rows.reduce((sum, text) => sum + text.split('\n').length - 1, 0);
    expect(out).toContain(`snaps read: ${snaps};`);
  });

  it.each([
    ['profile.yaml', 'columns: { down: { haeder: DN } }\n', profileSchema],
    ['formations.yaml', 'formations:\n  Trips: { recievers: 3x1 }\n', formationBookSchema],
    ['week-09/week.yaml', 'opponent: Harrow Creek\nmenu: { sise: 9 }\n', weekSettingsSchema],
    ['week-09/week.yaml', 'opponent: [Harrow Creek\n', weekSettingsSchema],
  ] as const)('names the faults of %s as the full reading does', (name, text, schema) => {
    const kept = name.startsWith('week') ? readFileSync(join(season, name), 'utf8') : undefined;
    const { code, note } = checkWith(name, text);
    if (kept !== undefined) writeFileSync(join(season, name), kept);
    const faults = faultsOf(schema, name, text);
    expect(faults).not.toBe('');
    expect(note).toContain(faults);
    expect(code).toBe(1);
  });

  it('ends with 2 for a folder that is not there', () => {
    const { code, note } = check(join(root, 'nowhere'));
    expect(code).toBe(2);
    expect(note).toContain('there is no folder');
  });
});
