import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { defenseSchema } from '../../src/game/short-form/defense-schema.ts';
import { readYaml } from '../../src/ingest/yaml-file.ts';

/** The calls of the demo season, every one in full. */
const FULL = 'tests/game/demo-defense-in-full.yaml';

type Raw = {
  roles: { id: string }[];
  calls: { name: string; rush: Record<string, unknown>[]; cover: Record<string, unknown>[] }[];
};
const demo = (): Raw => parse(readFileSync(FULL, 'utf8'));
const problemsOf = (library: unknown) => {
  const read = defenseSchema.safeParse(library);
  return read.success ? [] : read.error.issues.map(({ path, message }) => ({ path: path.join('.'), message }));
};

describe('defense.yaml', () => {
  it('of the demo season is valid', () => {
    expect(problemsOf(demo())).toEqual([]);
  });

  it('names the call and the role when a call speaks of a man we do not have', () => {
    const library = demo();
    library.calls[3]!.rush[0]!['role'] = 'nikel';
    expect(problemsOf(library)).toEqual([
      {
        path: 'calls.3.rush.0.role',
        message: expect.stringContaining('Latch Roof, rush: nikel is not one of our roles'),
      },
    ]);
  });

  it('names a role written twice, and a call written twice', () => {
    const library = demo();
    library.roles[1]!.id = 'nose';
    library.calls[4]!.name = 'Latch Roof';
    const messages = problemsOf(library).map(({ message }) => message);
    expect(messages).toContain('role nose is written twice');
    expect(messages).toContain('call Latch Roof is written twice');
  });

  it('refuses a late man who also peels', () => {
    const library = demo();
    const call = library.calls.find(({ name }) => name === 'Hackle Extra');
    call!.rush[6]!['peels'] = true;
    expect(problemsOf(library).map(({ message }) => message)).toEqual([
      'Hackle Extra, safety_middle: a man who joins late when the back blocks cannot also peel with him',
    ]);
  });

  it('names the call, the role and the rule where a word of a call is not one we know', () => {
    const text = readFileSync(FULL, 'utf8').replace('{ role: nickel, lane: near_C }', '{ role: nickel, lane: near_E }');
    const read = readYaml(text, defenseSchema, 'defense.yaml');
    if (read.kind !== 'problems') throw new Error('near_E was taken for a lane');
    const [problem] = read.problems;
    expect(problem?.header).toBe('calls[3] (Swap Roof).rush[1] (nickel).lane');
    expect(problem?.rule).toContain('is not one of far_D, far_C');
    expect(problem?.suggestion).toContain('near_');
  });

  // The field is 160 feet wide, 26.7 yards to a side (Football Rules Book, National Federation, rule 1). The rest guards
  // against a slip of the key, such as 300 reps for 30: common practice, no source.
  it.each([
    { what: 'roles.9.lateral', most: 27, far: 28 },
    { what: 'roles.9.lateral', most: -27, far: -28 },
    { what: 'roles.9.depth', most: 30, far: 31 },
    { what: 'roles.9.depth', most: 0, far: -1 },
    { what: 'calls.0.reps.first', most: 300, far: 301 },
    { what: 'calls.0.reps.weekly', most: 100, far: 101 },
  ])('takes $most for $what and asks again at $far', ({ what, most, far }) => {
    const withNumber = (value: number) => {
      const library = demo();
      const [at, last] = [what.split('.').slice(0, -1), what.split('.').at(-1) as string];
      const part = at.reduce((inner, key) => inner[key] as Record<string, unknown>, library as Record<string, unknown>);
      part[last] = value;
      return problemsOf(library).map(({ path }) => path);
    };
    expect(withNumber(most)).toEqual([]);
    expect(withNumber(far)).toEqual([what]);
  });

  it('gives all problems in one go', () => {
    const library = demo();
    library.calls[0]!.cover[0]!['role'] = 'ghost';
    library.calls[1]!.cover[0]!['role'] = 'ghost';
    expect(problemsOf(library)).toHaveLength(2);
  });
});
