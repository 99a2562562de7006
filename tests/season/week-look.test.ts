import { describe, expect, it } from 'vitest';
import { weekTemplate } from '../../src/ingest/templates.ts';
import { settingFields } from '../../src/season/setting-fields.ts';
import { lookIntoWeek } from '../../src/season/week-look.ts';

const look = (text: string, path: readonly (string | number)[], value: unknown) =>
  lookIntoWeek({ text, changes: [{ path, value }] });

describe('week.yaml looked into', () => {
  it('gives what is written, and no fault in a new week', () => {
    const { values, problems } = lookIntoWeek({ text: weekTemplate(), changes: [] });
    expect(problems).toEqual([]);
    expect(values).toMatchObject({ opponent: 'Name of the opponent', menu: { size: 10 } });
  });

  it.each([
    [['menu', 'size'], 'many', 'menu.size', '"many" is not a number.'],
    [['menu', 'size'], 99, 'menu.size', '"99" must be at most 30.'],
    [['date'], '23 Oct', 'date', '"23 Oct" is not a day written YYYY-MM-DD, such as 2026-10-23.'],
    [['level'], 'high-school', 'level', 'Did you mean "high_school"?'],
    [['opponent'], '', 'opponent', 'at least 1 character'],
    [
      ['practice', 'days', 0],
      { day: 'Tue', periods: [{ name: 'x', minutes: 0, reps: 1 }] },
      'practice.days.periods.minutes',
      'at least 1',
    ],
    [['oponent'], 'x', 'oponent', 'Did you mean "opponent"?'],
  ])('names the fault at %j', (path, value, ...[at, words]) => {
    const { problems } = look('opponent: Cedar Falls\n', path, value);
    expect(problems).toHaveLength(1);
    expect(problems[0]?.path).toBe(at);
    expect(problems[0]?.words).toContain(words);
    expect(problems[0]?.line).toMatch(/^week\.yaml, line \d/);
  });

  it('leaves a text that is not well-formed as it is, and says where', () => {
    const text = 'opponent: {\nmenu: 3';
    const found = look(text, ['opponent'], 'Cedar Falls');
    expect(found).toMatchObject({ text, isWellFormed: false });
    expect(found.problems[0]?.line).toMatch(/line \d/);
  });
});

describe('the settings as fields', () => {
  const fields = settingFields();

  it('are every setting once, each with what counts when it is left out', () => {
    const names = fields.map(({ path }) => path.join('.'));
    expect(new Set(names).size).toBe(names.length);
    expect(fields.find(({ path }) => path.join() === 'situations,third,short')).toMatchObject({ usual: '3' });
    expect(fields.find(({ path }) => path.join() === 'menu,pressure_rate,most')).toMatchObject({ usual: '0.6' });
    expect(fields.find(({ path }) => path.join() === 'date')).toMatchObject({ form: 'date', usual: '' });
    expect(fields.filter(({ form }) => form === 'list').map(({ path }) => path.join('.'))).toEqual([
      'menu.must',
      'menu.ban',
      'practice.days',
      'sheet.order',
      'families',
    ]);
  });

  it('are those of a new week, which writes every default out', () => {
    const { values } = lookIntoWeek({ text: weekTemplate(), changes: [] });
    const written = pathsOf(values);
    const asked = new Set(fields.map(({ path }) => path.join('.')));
    expect(written.length).toBeGreaterThan(40);
    expect(written.filter((path) => !asked.has(path))).toEqual([]);
  });
});

function pathsOf(value: unknown, path: readonly string[] = []): string[] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return [path.join('.')];
  return Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...path, key]));
}
