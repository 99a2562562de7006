import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BinaryProgram, DIRECTIONS, solveBinaryProgram } from '../../src/stats/binary-program.ts';
import { StatsInputError } from '../../src/stats/errors.ts';
import { solvedElsewhere } from './second-solver.ts';

const holds = {
  '<=': (x: number, y: number) => x <= y,
  '>=': (x: number, y: number) => x >= y,
  '=': (x: number, y: number) => x === y,
};

const programs = (least: { value: number; factor: number }): fc.Arbitrary<BinaryProgram> =>
  fc.integer({ min: 1, max: 9 }).chain((items) =>
    fc.record({
      values: fc.array(fc.integer({ min: least.value, max: 30 }), { minLength: items, maxLength: items }),
      constraints: fc.array(
        fc.record({
          coefficients: fc.array(fc.integer({ min: least.factor, max: 9 }), { minLength: items, maxLength: items }),
          direction: fc.constantFrom(...DIRECTIONS),
          limit: fc.integer({ min: 0, max: 25 }),
        }),
        { maxLength: 4 },
      ),
    }),
  );

/** The largest total over every permitted choice, or null. */
function byEnumeration({ values, constraints }: BinaryProgram): number | null {
  let best: number | null = null;
  for (let set = 0; set < 1 << values.length; set += 1) {
    const sum = (factors: readonly number[]) => factors.reduce((s, f, i) => (set & (1 << i) ? s + f : s), 0);
    if (!constraints.every((c) => holds[c.direction](sum(c.coefficients), c.limit))) continue;
    const value = sum(values);
    if (best === null || value > best) best = value;
  }
  return best;
}

describe('binary program', () => {
  it('agrees with trying every choice', () => {
    fc.assert(
      fc.property(programs({ value: -9, factor: 0 }), (input) => {
        const got = solveBinaryProgram(input);
        const best = byEnumeration(input);
        expect(got.feasible ? got.value : null).toBe(best);
        if (!got.feasible) return;
        const sum = (factors: readonly number[]) => factors.reduce((s, f, i) => s + f * got.chosen[i]!, 0);
        expect(sum(input.values)).toBe(got.value);
        for (const c of input.constraints) expect(holds[c.direction](sum(c.coefficients), c.limit)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it('agrees with javascript-lp-solver', () => {
    const bound = { '<=': 'max', '>=': 'min', '=': 'equal' } as const;
    fc.assert(
      // The other library calls a program whose factors are all 0 infeasible, so every item takes part in something.
      fc.property(programs({ value: 1, factor: 1 }), ({ values, constraints }) => {
        const theirs = solvedElsewhere({
          constraints: {
            ...Object.fromEntries(constraints.map((c, i) => [`c${i}`, { [bound[c.direction]]: c.limit }])),
            ...Object.fromEntries(values.map((_, j) => [`one${j}`, { max: 1 }])),
          },
          variables: Object.fromEntries(
            values.map((total, j) => [
              `x${j}`,
              {
                total,
                [`one${j}`]: 1,
                ...Object.fromEntries(constraints.map((c, i) => [`c${i}`, c.coefficients[j]!])),
              },
            ]),
          ),
          ints: Object.fromEntries(values.map((_, j) => [`x${j}`, 1 as const])),
        });
        const got = solveBinaryProgram({ values, constraints });
        expect(got.feasible).toBe(theirs.feasible);
        if (got.feasible) expect(got.value).toBeCloseTo(theirs.result, 6);
      }),
      { numRuns: 60 },
    );
  });

  it('is exact where taking the best item per unit first fails', () => {
    // By worth per unit: items 1 and 2 for 12; items 2 and 3 fill the room for 15.
    const got = solveBinaryProgram({
      values: [6, 6, 9],
      constraints: [{ coefficients: [3, 4, 7], direction: '<=', limit: 11 }],
    });
    expect(got).toEqual({ feasible: true, value: 15, chosen: [0, 1, 1] });
  });

  it('with no item has the empty choice', () => {
    expect(solveBinaryProgram({ values: [], constraints: [] })).toEqual({ feasible: true, value: 0, chosen: [] });
  });

  it('refuses a constraint of the wrong length', () => {
    const input: BinaryProgram = { values: [1, 2], constraints: [{ coefficients: [1], direction: '<=', limit: 1 }] };
    expect(() => solveBinaryProgram(input)).toThrow(StatsInputError);
  });
});
