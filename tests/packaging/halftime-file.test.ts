import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = mkdtempSync(join(tmpdir(), 'halftime-file-'));
const dist = join(root, 'dist');
const season = join(root, 'season');
const week = join(season, 'week-09');

beforeAll(() => {
  execFileSync('node', ['scripts/build.mjs', dist]);
  writeFileSync(join(root, 'package.json'), '{ "type": "module" }');
  cpSync('data/demo/season', season, { recursive: true, filter: (path) => !/[\\/]out([\\/]|$)/.test(path) });
}, 120_000);
afterAll(() => rmSync(root, { recursive: true, force: true }));

function run(command: string) {
  const { status, stdout, stderr } = spawnSync('node', [join(dist, 'cli.js'), command, week], { encoding: 'utf8' });
  return { code: status, out: stdout, note: stderr };
}

describe('halftime, a file of its own in the built program', () => {
  it('loads no other file but the exit codes and the special functions before it is asked for more', () => {
    const code = readFileSync(join(dist, 'halftime.js'), 'utf8');
    const imports = code.matchAll(/(?:^|[;}\n])import\s*(?:[^;'"()]*?from)?\s*["']([^"']+)["']/g);
    const loaded = [...imports].map(([, from]) => from).filter((from) => !from?.startsWith('node:'));
    expect(new Set(loaded)).toEqual(new Set(['./user-problem.js', './special-functions.js']));
  });

  it('says the same whether Sunday’s plan is saved or has to be worked out again', () => {
    const worked = run('halftime');
    expect(worked.note).toContain("Sunday's plan is worked out");
    expect(existsSync(join(week, 'out', 'report.json'))).toBe(false);
    expect(run('report').code).toBe(0);
    const saved = run('halftime');
    expect(saved.note).not.toContain('worked out');
    expect(saved.out).toContain('snaps tonight');
    expect({ ...saved, note: '' }).toEqual({ ...worked, note: '' });
  }, 60_000);

  it('reads the live sheet through a profile, and names what is wrong with one', () => {
    const profile = join(season, 'profile.yaml');
    writeFileSync(profile, 'columns: { down: { haeder: DN } }\n');
    const { code, note } = run('halftime');
    rmSync(profile);
    expect(code).toBe(1);
    expect(note).toContain('haeder');
  });
});
