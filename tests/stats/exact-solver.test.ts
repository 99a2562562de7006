import { describe, expect, it } from 'vitest';
import { loadExactSolver } from '../../src/stats/exact-solver.ts';
import type { MixedProgram } from '../../src/stats/mixed-program.ts';
import { createRandom } from '../../src/stats/random.ts';
import { solvedElsewhere } from './second-solver.ts';

const solve = await loadExactSolver();

/** A 0-1 knapsack of given worths and weights. */
function knapsack(worths: readonly number[], weights: readonly number[], room: number): MixedProgram {
  const terms = (list: readonly number[]) => new Map(list.map((value, i) => [`item ${i}`, value] as const));
  return {
    maximize: terms(worths),
    constraints: [{ terms: terms(weights), max: room }],
    binaries: worths.map((_, i) => `item ${i}`),
  };
}

/** The same program for the second solver, binaries bounded by one. */
function elsewhere({ maximize, constraints, binaries = [] }: MixedProgram): number {
  const whole = [...binaries];
  const variables: Record<string, Record<string, number>> = {};
  for (const [name, total] of maximize as Map<string, number>) variables[name] = { total };
  constraints.forEach(({ terms }, row) => {
    for (const [name, factor] of terms as Map<string, number>) variables[name]![`row ${row}`] = factor;
  });
  for (const name of whole) variables[name]![`bound ${name}`] = 1;
  const rows = constraints.map(({ min, max }, row) => [
    `row ${row}`,
    { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) },
  ]);
  const bounds = whole.map((name) => [`bound ${name}`, { max: 1 }]);
  return solvedElsewhere({
    constraints: Object.fromEntries([...rows, ...bounds]),
    variables,
    ints: Object.fromEntries(whole.map((name) => [name, 1 as const])),
  }).result;
}

describe('loadExactSolver', () => {
  it('solves published knapsacks', () => {
    // Burkardt, Knapsack 0/1 data sets P01 and P07 (Florida State University, public): optimal profits 309 and 1458.
    const p01 = knapsack([92, 57, 49, 68, 60, 43, 67, 84, 87, 72], [23, 31, 29, 44, 53, 38, 63, 85, 89, 82], 165);
    const p07 = knapsack(
      [135, 139, 149, 150, 156, 163, 173, 184, 192, 201, 210, 214, 221, 229, 240],
      [70, 73, 77, 80, 82, 87, 90, 94, 98, 106, 110, 113, 115, 118, 120],
      750,
    );
    expect(solve(p01)).toMatchObject({ status: 'optimal', value: expect.closeTo(309, 9) });
    expect(solve(p07)).toMatchObject({ status: 'optimal', value: expect.closeTo(1458, 9) });
  });

  it('agrees with a second solver on random mixed programs (javascript-lp-solver)', () => {
    const random = createRandom('exact solver');
    for (let round = 0; round < 20; round++) {
      const names = Array.from({ length: 6 }, (_, i) => `v ${i}`);
      const terms = (least: number) => new Map(names.map((name) => [name, least + 3 * random.uniform()] as const));
      const program = {
        maximize: terms(0.1),
        constraints: [
          { terms: terms(0.2), max: 4 },
          { terms: terms(0.2), max: 3 },
          { terms: terms(0.2), min: 0.5 },
        ],
        binaries: names.slice(0, 3),
      };
      const one = solve(program);
      if (one.status !== 'optimal') throw new Error('there is an optimum');
      expect(one.value).toBeCloseTo(elsewhere(program), 6);
    }
  });

  it('says what has no solution and what has no end', () => {
    const of = (min: number, max: number) => ({
      maximize: { a: 1 },
      constraints: [
        { terms: { a: 1 }, min },
        { terms: { a: 1 }, max },
      ],
    });
    expect(solve(of(2, 1))).toEqual({ status: 'infeasible' });
    expect(solve({ maximize: { a: 1 }, constraints: [{ terms: { a: 1 }, min: 1 }] })).toEqual({ status: 'unbounded' });
  });
});
