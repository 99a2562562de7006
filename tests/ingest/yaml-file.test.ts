import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { describeProblem } from '../../src/ingest/row-problem.ts';
import { readYaml } from '../../src/ingest/yaml-file.ts';

const schema = z.strictObject({
  opponent: z.string().min(1),
  menu: z.strictObject({ size: z.number().int().min(1).max(30), trust: z.number().min(0).max(1) }).optional(),
  level: z.enum(['high_school', 'college']).optional(),
  days: z.array(z.strictObject({ day: z.enum(['Mon', 'Tue']), minutes: z.number() })).optional(),
  calls: z.record(z.string(), z.number()).optional(),
});
const said = (text: string) => {
  const reading = readYaml(text, schema, 'week.yaml');
  return reading.kind === 'problems' ? reading.problems.map(describeProblem) : reading.value;
};

describe('readYaml', () => {
  it('gives the value of a sound file, from text and from bytes', () => {
    const text = 'opponent: Union\nmenu: { size: 9, trust: 0.5 }\n';
    const value = { opponent: 'Union', menu: { size: 9, trust: 0.5 } };
    expect(readYaml(text, schema, 'week.yaml')).toEqual({ kind: 'value', value });
    expect(readYaml(new TextEncoder().encode(`\ufeff${text}`), schema, 'week.yaml')).toEqual({ kind: 'value', value });
  });

  it('gives every problem at once, with line, key path, value and suggestion', () => {
    const text =
      'menu:\n  size: 99\n  trust: high\n  sise: 3\nlevel: highschool\ndays:\n  - { day: Mon, minutes: 5 }\n  - { day: Wen, minutes: x }\n';
    expect(said(text)).toEqual([
      'week.yaml, line 1, "opponent": is missing; a text is needed.',
      'week.yaml, line 2, "menu.size": "99" must be at most 30.',
      'week.yaml, line 3, "menu.trust": "high" is not a number.',
      'week.yaml, line 4, "menu.sise": "sise" is not a key here; known are size, trust. Did you mean "size"?',
      'week.yaml, line 5, "level": "highschool" is not one of high_school, college. Did you mean "high_school"?',
      'week.yaml, line 8, "days[2].day": "Wen" is not one of Mon, Tue.',
      'week.yaml, line 8, "days[2].minutes": "x" is not a number.',
    ]);
  });

  it.each([
    ['an empty file', '', /"opponent": is missing/],
    ['a list instead of keys', '- 1\n', /is not a group of keys/],
    ['an open quotation mark', 'opponent: "Union\n', /line \d+: is not well-formed YAML/],
    ['a key that stands twice', 'opponent: a\nopponent: b\n', /not well-formed YAML: Map keys must be unique/],
    ['a tab as indent', 'menu:\n\tsize: 1\n', /not well-formed YAML/],
    ['an unknown key that is nowhere near', 'opponent: a\nzzz: 1\n', /"zzz" is not a key here; known are opponent/],
    ['a prototype key', 'opponent: a\n__proto__: { x: 1 }\n', /"__proto__" is not a key here/],
    ['nesting without end', `opponent: ${'['.repeat(20_000)}`, /nested too deeply|not well-formed/],
    ['deep nesting', `opponent: ${'['.repeat(60)}${']'.repeat(60)}`, /is nested too deeply/],
    ['a file far too long', `opponent: ${'a'.repeat(1_000_001)}`, /far too long/],
  ])('says in plain words what is wrong with %s', (_, text, says) => {
    expect([said(text)].flat().join('\n')).toMatch(says);
  });

  it('refuses aliases that multiply ("billion laughs")', () => {
    const levels = Array.from({ length: 9 }, (_, i) => `l${i + 1}: &l${i + 1} [${`*l${i},`.repeat(9)}]`);
    expect([said(`l0: &l0 lol\n${levels.join('\n')}\n`)].flat().join()).toMatch(/repeats parts of itself/);
  });

  it('refuses a file that is not text', () => {
    const reading = readYaml(Uint8Array.of(0x50, 0x4b, 3, 4), schema, 'week.yaml');
    expect(reading.kind === 'problems' && reading.problems.map(describeProblem)[0]).toMatch(/zip archive, not a plain/);
  });

  it('keeps values as text where the schema asks for it', () => {
    const texts = z.record(z.string(), z.string()).meta({ scalars: 'text' });
    expect(readYaml('a: 01\nb: no\nc: 1.50\n', texts, 'x.yaml')).toEqual({
      kind: 'value',
      value: { a: '01', b: 'no', c: '1.50' },
    });
  });

  it('explains the nearest of several shapes', () => {
    const either = z.strictObject({ size: z.union([z.strictObject({ least: z.number() }), z.number()]) });
    const reading = readYaml('size: { least: x }\n', either, 'x.yaml');
    expect(reading.kind === 'problems' && reading.problems.map(describeProblem)).toEqual([
      'x.yaml, line 1, "size.least": "x" is not a number.',
    ]);
  });
});

describe('readYaml, files that are none', () => {
  const rules = (text: string) => {
    const reading = readYaml(text, schema, 'week.yaml');
    return reading.kind === 'problems' ? reading.problems.map(({ rule }) => rule) : [];
  };

  it.each([
    ['100,000 lines', 'a: 1\n'.repeat(100_000)],
    ['100,000 entries in a line', `x: [${'1,'.repeat(100_000)}]`],
    ['two million characters', `x: ${'y'.repeat(2_000_000)}`],
  ])('%s are refused before they are parsed', (_, text) => {
    expect(rules(text)).toEqual(['is far too long for a settings file']);
  });

  it.each(['[', '{a: ', '- ', '? '])('nesting by "%s" without end is called nesting', (opening) => {
    expect(rules(`${opening.repeat(30_000)}`)).toEqual(['is nested too deeply']);
  });

  it('names the first unknown keys and counts the rest', () => {
    const text = Array.from({ length: 10_000 }, (_, i) => `key${i}: 1`).join('\n');
    const said = rules(`opponent: x\n${text}`);
    expect(said).toHaveLength(51);
    expect(said.filter((rule) => rule === 'has 9950 more unknown keys')).toHaveLength(1);
  });
});

it('says what is wrong in its own words alone: the parser warns nobody', () => {
  const warned: unknown[] = [];
  const { emitWarning } = process;
  process.emitWarning = ((warning: unknown) => warned.push(warning)) as typeof emitWarning;
  try {
    expect(readYaml('? [a]\n: b\n', schema, 'week.yaml').kind).toBe('problems');
  } finally {
    process.emitWarning = emitWarning;
  }
  expect(warned).toEqual([]);
});
