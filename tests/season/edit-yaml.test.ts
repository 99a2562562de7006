import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readWeekSettings } from '../../src/ingest/settings-text.ts';
import { STARTER_DEFENSE } from '../../src/ingest/starter-defense.ts';
import { weekTemplate } from '../../src/ingest/templates.ts';
import { callNames, withSettings } from '../../src/season/edit-yaml.ts';
import { demoDefense } from '../pressure/demo-defense.ts';

const TEXT = `# Ours, written by hand.
opponent: Cedar Falls # away
menu:
  # Six is enough.
  size: 6
  reps: 90
weather: rain
`;

describe('a setting put into week.yaml', () => {
  it('changes its own line alone', () => {
    expect(withSettings(TEXT, [{ path: ['menu', 'size'], value: 8 }])).toBe(TEXT.replace('size: 6', 'size: 8'));
    const renamed = withSettings(TEXT, [{ path: ['opponent'], value: 'Pine Hollow' }]);
    expect(renamed).toBe(TEXT.replace('Cedar Falls', 'Pine Hollow'));
  });

  it('leaves every other byte, also in the template and the demo', () => {
    for (const text of [TEXT, weekTemplate(), readFileSync('data/demo/season/week-09/week.yaml', 'utf8')]) {
      const changed = withSettings(text, [{ path: ['menu', 'size'], value: 23 }]);
      expect(changed).toBe(text.replace(/^( {2}size:) \d+/m, '$1 23'));
    }
  });

  it.each(['Cedar: Falls', 'yes', '12', '# none', 'a "b" \'c\'', '- x', '{', ''])(
    'reads back as the words %j, on a line of its own and between braces',
    (words) => {
      const text = withSettings('a: x\nb: { c: y, d: 1 }\n', [
        { path: ['a'], value: words },
        { path: ['b', 'c'], value: `${words}, and` },
      ]);
      expect(parse(text)).toEqual({ a: words, b: { c: `${words}, and`, d: 1 } });
    },
  );

  it('that is taken away leaves comments and unknown keys', () => {
    const text = withSettings(TEXT, [{ path: ['menu', 'size'], value: undefined }]);
    expect(text).toContain('# Six is enough.');
    expect(text).toContain('weather: rain');
    expect(text).not.toContain('size');
    expect(withSettings(text, [{ path: ['menu', 'size'], value: undefined }])).toBe(text);
  });

  it('opens groups that are empty or not there', () => {
    const text = withSettings('opponent: Cedar Falls\nmenu:\n', [
      { path: ['menu', 'size'], value: 8 },
      { path: ['practice', 'days'], value: [] },
      { path: ['practice', 'days', 0], value: { day: 'Tue', periods: [{ name: 'team', minutes: 10, reps: 12 }] } },
      { path: ['practice', 'days', 0, 'periods', 0, 'reps'], value: 15 },
    ]);
    const read = readWeekSettings(text);
    if (read.kind === 'problems') throw new Error(text);
    expect(read.value.menu.size).toBe(8);
    expect(read.value.practice.days).toEqual([
      { day: 'Tue', periods: [{ name: 'team', minutes: 10, reps: 15, contact: 'control' }] },
    ]);
    expect(text).toContain('    - day: Tue\n');
  });
});

describe('the calls of defense.yaml by name', () => {
  it('are found however a call is written', () => {
    expect(callNames(STARTER_DEFENSE)).toHaveLength(11);
    const demo = callNames(readFileSync('data/demo/season/defense.yaml', 'utf8'));
    expect(demo.slice(0, 4)).toEqual(['Stay Roof', 'Stay Split', 'Swap Roof', 'Latch Roof']);
    expect(demo).toEqual(demoDefense.calls.map(({ name }) => name));
  });

  it('are none in a file that cannot be read', () => {
    expect([callNames(''), callNames('calls: {'), callNames('calls: 3')]).toEqual([[], [], []]);
  });
});
