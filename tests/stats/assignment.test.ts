import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ASSIGNMENT_GOALS, solveAssignment } from '../../src/stats/assignment.ts';
import { StatsInputError } from '../../src/stats/errors.ts';

const NEVER = Number.POSITIVE_INFINITY;
const matrix = (cell: fc.Arbitrary<number>) =>
  fc
    .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 5 }))
    .chain(([rows, columns]) =>
      fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
    );
const whole = fc.integer({ min: -15, max: 15 });

/** Every pairing in turn: the most pairs first, then the smallest total. */
function byEnumeration(costs: number[][]): { pairs: number; total: number } {
  let best = { pairs: 0, total: 0 };
  const visit = (row: number, used: number, made: { pairs: number; total: number }): void => {
    if (row === costs.length) {
      if (made.pairs > best.pairs || (made.pairs === best.pairs && made.total < best.total)) best = made;
      return;
    }
    visit(row + 1, used, made);
    costs[row]!.forEach((cost, j) => {
      if (used & (1 << j) || !Number.isFinite(cost)) return;
      visit(row + 1, used | (1 << j), { pairs: made.pairs + 1, total: made.total + cost });
    });
  };
  visit(0, 0, { pairs: 0, total: 0 });
  return best;
}

describe('assignment', () => {
  it('agrees with trying every pairing, forbidden pairs included', () => {
    fc.assert(
      fc.property(
        matrix(fc.oneof({ weight: 4, arbitrary: whole }, { weight: 1, arbitrary: fc.constant(NEVER) })),
        (costs) => {
          const { total, columnOfRow } = solveAssignment(costs);
          const made = columnOfRow.filter((j) => j >= 0);
          expect(new Set(made).size).toBe(made.length);
          expect({ pairs: made.length, total }).toEqual(byEnumeration(costs));
          const sum = columnOfRow.reduce((s, j, i) => (j < 0 ? s : s + costs[i]![j]!), 0);
          expect(sum).toBe(total);
        },
      ),
      { numRuns: 400 },
    );
  });

  it('maximising gains is minimising their negatives', () => {
    fc.assert(
      fc.property(matrix(whole), (gains) => {
        const costs = gains.map((row) => row.map((x) => 0 - x));
        expect(solveAssignment(gains, 'maximize').total).toBe(0 - solveAssignment(costs, 'minimize').total);
      }),
    );
  });

  it('turns with its matrix', () => {
    fc.assert(
      fc.property(matrix(whole), fc.constantFrom(...ASSIGNMENT_GOALS), (weights, goal) => {
        const turned = weights[0]!.map((_, j) => weights.map((row) => row[j]!));
        expect(solveAssignment(turned, goal).total).toBe(solveAssignment(weights, goal).total);
      }),
    );
  });

  it('leaves a row with no permitted column at -1 rather than break the rule', () => {
    expect(
      solveAssignment([
        [NEVER, NEVER],
        [1, 2],
      ]),
    ).toEqual({ total: 1, columnOfRow: [-1, 0] });
  });

  it('prefers one more pair to any saving', () => {
    expect(
      solveAssignment([
        [1, 900],
        [1, NEVER],
      ]),
    ).toEqual({ total: 901, columnOfRow: [1, 0] });
  });

  it('of no rows or no columns makes no pair', () => {
    expect(solveAssignment([])).toEqual({ total: 0, columnOfRow: [] });
    expect(solveAssignment([[], []])).toEqual({ total: 0, columnOfRow: [-1, -1] });
  });

  it('refuses ragged rows and NaN', () => {
    expect(() => solveAssignment([[1, 2], [1]])).toThrow('solveAssignment requires rows of equal length');
    expect(() => solveAssignment([[Number.NaN]])).toThrow(StatsInputError);
  });
});
