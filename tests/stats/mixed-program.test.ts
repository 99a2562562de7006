import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { type MixedProgram, solveMixedProgram } from '../../src/stats/mixed-program.ts';

function optimum(program: MixedProgram) {
  const solved = solveMixedProgram(program);
  if (solved.status !== 'optimal') throw new Error(`expected an optimum, got ${solved.status}`);
  return solved;
}

describe('mixed 0-1 program', () => {
  it('solves the Wyndor Glass plan: 2 doors, 6 windows, 36 (Hillier and Lieberman, chapter 3; from memory)', () => {
    const got = optimum({
      maximize: { doors: 3, windows: 5 },
      constraints: [
        { terms: { doors: 1 }, max: 4 },
        { terms: { windows: 2 }, max: 12 },
        { terms: { doors: 3, windows: 2 }, max: 18 },
      ],
    });
    expect(got.value).toBeCloseTo(36, 8);
    expect(got.solution.get('doors')).toBeCloseTo(2, 8);
    expect(got.solution.get('windows')).toBeCloseTo(6, 8);
  });

  it('takes numbers as names and lists as sums: the same plan, its doors 0 and its windows 1', () => {
    const got = solveMixedProgram<number>({
      maximize: [
        [0, 3],
        [1, 5],
      ],
      constraints: [
        { terms: [[0, 1]], max: 4 },
        { terms: [[1, 2]], max: 12 },
        {
          terms: new Map([
            [0, 3],
            [1, 2],
          ]),
          max: 18,
        },
      ],
    });
    if (got.status !== 'optimal') throw new Error(`expected an optimum, got ${got.status}`);
    expect(got.value).toBeCloseTo(36, 8);
    expect(got.solution.get(0)).toBeCloseTo(2, 8);
    expect(got.solution.get(1)).toBeCloseTo(6, 8);
  });

  it('keeps binaries whole and lets the others be fractions', () => {
    const got = optimum({
      maximize: new Map([
        ['a', 3],
        ['b', 2],
      ]),
      constraints: [{ terms: { a: 1, b: 1 }, max: 1.5 }],
      binaries: ['a'],
    });
    expect(got.value).toBeCloseTo(4, 8);
    expect(got.solution.get('a')).toBe(1);
    expect(got.solution.get('b')).toBeCloseTo(0.5, 8);
  });

  it('names every variable in the solution, zeros and constraint-only ones included', () => {
    const got = optimum({
      maximize: { a: -1 },
      constraints: [{ terms: { c: 1 }, equal: 0 }],
      binaries: ['a', 'lonely'],
    });
    expect([...got.solution.keys()].sort()).toEqual(['a', 'c', 'lonely']);
    expect(got.value).toBeCloseTo(0, 12);
  });

  it('says when nothing fits and when nothing holds the objective', () => {
    expect(
      solveMixedProgram({ maximize: { a: 1 }, constraints: [{ terms: { a: 1 }, min: 2 }], binaries: ['a'] }),
    ).toEqual({
      status: 'infeasible',
    });
    expect(solveMixedProgram({ maximize: { a: 1 }, constraints: [{ terms: { a: 1 }, min: 2 }] })).toEqual({
      status: 'unbounded',
    });
  });

  it('agrees with trying every choice of the binaries when fractions fill what is left', () => {
    const item = fc.record({ worth: fc.integer({ min: 1, max: 30 }), size: fc.integer({ min: 1, max: 20 }) });
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 9 }), fc.integer({ min: 0, max: 60 }), (items, room) => {
        const names = items.map((_, i) => `x${i}`);
        const got = optimum({
          maximize: { ...Object.fromEntries(items.map((it, i) => [names[i], it.worth])), filler: 0.7 },
          constraints: [
            { terms: { ...Object.fromEntries(items.map((it, i) => [names[i], it.size])), filler: 1 }, max: room },
            { terms: { filler: 1 }, max: 4.5 },
          ],
          binaries: names,
        });
        let best = 0;
        for (let set = 0; set < 1 << items.length; set += 1) {
          const chosen = items.filter((_, i) => set & (1 << i));
          const size = chosen.reduce((s, it) => s + it.size, 0);
          if (size > room) continue;
          best = Math.max(best, chosen.reduce((s, it) => s + it.worth, 0) + 0.7 * Math.min(4.5, room - size));
        }
        expect(got.value).toBeCloseTo(best, 7);
      }),
      { numRuns: 60 },
    );
  });

  it('does not depend on the order of the constraints', () => {
    const constraints = [
      { terms: { a: 2, b: 1, c: 3 }, max: 4 },
      { terms: { a: 1, c: 1 }, min: 1 },
      { terms: { a: 1, b: 1, c: 1 }, equal: 2 },
    ];
    const program = { maximize: { a: 4, b: 3, c: 5 }, binaries: ['a', 'b', 'c'] };
    const there = optimum({ ...program, constraints });
    const back = optimum({ ...program, constraints: constraints.toReversed() });
    expect(back.value).toBeCloseTo(there.value, 8);
    expect(there.value).toBeCloseTo(8, 8); // b and c fill the room of 4; a and b are worth 7
  });

  it('refuses a constraint without a bound and factors that are no numbers', () => {
    expect(() => solveMixedProgram({ maximize: { a: 1 }, constraints: [{ terms: { a: 1 } }] })).toThrow(
      'a constraint requires min, max or equal',
    );
    expect(() => solveMixedProgram({ maximize: { a: Number.NaN }, constraints: [] })).toThrow(StatsInputError);
    expect(() =>
      solveMixedProgram({ maximize: { a: 1 }, constraints: [{ terms: { a: 1 }, max: Number.NaN }] }),
    ).toThrow('the max of a constraint must be a finite number, got NaN');
  });
});
