import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { atTerminal, hasTerminal } from './at-terminal.ts';
import { run } from './program.ts';

const root = mkdtempSync(join(tmpdir(), 'colors-'));
const season = join(root, 'season');
const week = join(season, 'week-01');

/** Invented: a snap, one with a fault, and one with a word nobody knows. */
const FILM = [
  'game,snap,down,to_go,ball_on,play_kind,hash',
  'w1,1,1,10,own 30,run,left',
  'w1,2,9,10,own 30,run,left',
  'w1,3,1,10,own 30,run,sideways',
];

beforeAll(() => {
  expect(run(['new', season]).code).toBe(0);
  writeFileSync(join(week, 'opponent.csv'), `${FILM.join('\n')}\n`);
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** The lines shown, each with the color it is in by ECMA-48 (1991), section 8.3.117: 31 red, 33 yellow; "" without one. */
function linesOf(shown: string): readonly (readonly [string, string])[] {
  return shown.split(/\r?\n/).map((line) => {
    const [, color = '', text = ''] = /^\p{Cc}\[(\d+)m(.*)\p{Cc}\[0m$/u.exec(line) ?? [undefined, '', line];
    return [color, text] as const;
  });
}

const colorsOf = (shown: string, start: RegExp) =>
  new Set(linesOf(shown).flatMap(([color, text]) => (start.test(text) ? [color] : [])));

describe.skipIf(!hasTerminal)('at a terminal', () => {
  it('faults are red, warnings yellow, and the rest plain', () => {
    const { code, shown } = atTerminal(['check', week]);
    expect(code).toBe(1);
    expect(colorsOf(shown, /^fault /)).toEqual(new Set(['31']));
    expect(colorsOf(shown, /^warning /)).toEqual(new Set(['33']));
    expect(colorsOf(shown, /^(Mend first|Charted|play_kind)/)).toEqual(new Set(['']));
  });

  it('a call that is not sound is red on the list of calls', () => {
    const file = join(season, 'defense.yaml');
    const sound = readFileSync(file, 'utf8');
    const spoilt = sound.replace('send: [nickel, mike] }', 'send: [nickel] }');
    expect(spoilt).not.toBe(sound);
    writeFileSync(file, spoilt);
    const { code, shown } = atTerminal(['calls', season]);
    writeFileSync(file, sound);
    expect(code).toBe(1);
    expect(colorsOf(shown, /NOT SOUND$/)).toEqual(new Set(['31']));
    expect(colorsOf(shown, / sound$/)).toEqual(new Set(['']));
  });

  it('NO_COLOR leaves everything plain, and so does a pipe (no-color.org, 2017)', () => {
    const plain = atTerminal(['check', week], { env: { NO_COLOR: '1' } }).shown;
    for (const text of [plain, run(['check', week]).out]) {
      expect(text).toMatch(/^fault /m);
      expect(text).not.toContain('\u001b[3');
    }
    // An empty NO_COLOR asks for nothing.
    expect(atTerminal(['check', week], { env: { NO_COLOR: '' } }).shown).toContain('\u001b[31m');
  });
});
