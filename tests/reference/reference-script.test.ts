import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const right = {
  id: 'right',
  method: 'binom.wilson',
  input: { x: 0, n: 0, conf: 0.95 },
  expected: { estimate: null, lower: 0, upper: 1 },
  tolerance: 0,
  source: 'constructed',
};
const wrong = { ...right, id: 'wrong', expected: { upper: 0.5 } };
const unknown = { ...right, id: 'unknown', method: 'binom.nothing' };

describe('npm run reference', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'reference-'));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  function run(checks: unknown[]): { status: number | null; lines: string[] } {
    const file = join(folder, 'checks.json');
    writeFileSync(file, JSON.stringify(checks));
    const { status, stdout } = spawnSync('npx', ['tsx', 'scripts/reference.ts', file], { encoding: 'utf8' });
    return { status, lines: stdout.trim().split('\n') };
  }

  it('counts what passed and exits 0', () => {
    const { status, lines } = run([right, right]);
    expect(lines).toEqual(['methods without an adapter: none', '2 passed, 0 failed, 0 skipped']);
    expect(status).toBe(0);
  });

  it('prints what failed and which methods it cannot run, and exits 1', () => {
    const { status, lines } = run([right, wrong, unknown]);
    expect(lines).toContain('FAIL wrong binom.wilson');
    expect(lines).toContain('  upper: expected 0.5, got 1');
    expect(lines.at(-2)).toBe('methods without an adapter: binom.nothing (1)');
    expect(lines.at(-1)).toBe('1 passed, 1 failed, 1 skipped');
    expect(status).toBe(1);
  });
});
