import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { INVENTED_COLUMNS, type InventedColumn, inventSnaps, sheetOf } from '../ingest/adopt/invented-sheet.ts';
import { atTerminal, hasTerminal } from './at-terminal.ts';
import { run } from './program.ts';

const made: string[] = [];
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});

const COLUMNS = INVENTED_COLUMNS.map(
  ([header, cell]): InventedColumn =>
    header === 'R/P' ? [header, (snap) => ({ slip: 'Z', kite: 'W' })[snap.concept] ?? snap.kind] : [header, cell],
);

/** A week with two codes on its sheet that nothing explains, adopted by somebody who types these replies. */
function adopted(replies: string) {
  const season = mkdtempSync(join(tmpdir(), 'adopt-terminal-'));
  made.push(season);
  const week = join(season, 'week-01');
  mkdirSync(week);
  writeFileSync(join(week, 'opponent.csv'), sheetOf(inventSnaps({ games: 3 }), COLUMNS));
  return { week, ...atTerminal(['adopt', join(week, 'opponent.csv')], { replies }) };
}

describe.skipIf(!hasTerminal)('adopting at a terminal', () => {
  it('asks there, and the answers lead to a week that checks without a fault', () => {
    const { week, code, shown } = adopted('screen|quick');
    expect(code, shown).toBe(0);
    expect(shown).toContain('2 questions');
    expect(shown).toContain('No questions are left');
    const profile = readFileSync(join(week, 'profile.yaml'), 'utf8');
    expect(profile).toMatch(/Z: screen[\s\S]*W: quick|W: quick[\s\S]*Z: screen/);
    expect(run(['check', week]).out).toMatch(/snaps read: 180; rows kept out of the numbers: 0/);
  });

  it('leaves open what was not answered when the input ends', () => {
    const { week, code, shown } = adopted('screen|^D');
    expect(code, shown).toBe(0);
    expect(readFileSync(join(week, 'profile.yaml'), 'utf8')).toMatch(/# +Answer with: --answer "play_kind\/W=/);
  });

  it('writes nothing when somebody breaks off', () => {
    const { week, code, shown } = adopted('screen|^C');
    expect(code, shown).toBe(2);
    expect(shown).toContain('broken off; nothing was written');
    expect(readdirSync(week)).toEqual(['opponent.csv']);
  });
});
