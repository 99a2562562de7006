import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { solveMatrixGame } from '../../src/stats/matrix-game.ts';
import { solvedElsewhere } from './second-solver.ts';

const game = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 })).chain(([rows, columns]) =>
  fc.array(fc.array(fc.integer({ min: -20, max: 20 }), { minLength: columns, maxLength: columns }), {
    minLength: rows,
    maxLength: rows,
  }),
);
const turned = (payoff: number[][]) => payoff[0]!.map((_, j) => payoff.map((row) => row[j]!));
const dot = (a: readonly number[], b: readonly number[]) => a.reduce((s, x, i) => s + x * b[i]!, 0);

describe('matrix game', () => {
  it('mixes are shares, and the value holds from both sides', () => {
    fc.assert(
      fc.property(game, (payoff) => {
        const { value, row, col } = solveMatrixGame(payoff);
        for (const mix of [row, col]) {
          expect(mix.every((share) => share >= 0)).toBe(true);
          expect(
            dot(
              mix,
              mix.map(() => 1),
            ),
          ).toBeCloseTo(1, 10);
        }
        expect(Math.min(...turned(payoff).map((column) => dot(column, row)))).toBeCloseTo(value, 5);
        expect(Math.max(...payoff.map((line) => dot(line, col)))).toBeCloseTo(value, 5);
      }),
      { numRuns: 400 },
    );
  });

  it('agrees with javascript-lp-solver', () => {
    fc.assert(
      fc.property(game, (payoff) => {
        const shift = 1 - Math.min(...payoff.flat());
        const theirs = solvedElsewhere({
          constraints: Object.fromEntries(payoff.map((_, i) => [`r${i}`, { max: 1 }])),
          variables: Object.fromEntries(
            payoff[0]!.map((_, j) => [
              `y${j}`,
              { total: 1, ...Object.fromEntries(payoff.map((line, i) => [`r${i}`, line[j]! + shift])) },
            ]),
          ),
        });
        expect(solveMatrixGame(payoff).value).toBeCloseTo(1 / theirs.result - shift, 4);
      }),
      { numRuns: 60 },
    );
  });

  it('a payoff for either player: the value changes sign when the players swap', () => {
    fc.assert(
      fc.property(game, (payoff) => {
        const swapped = turned(payoff).map((line) => line.map((x) => -x));
        expect(solveMatrixGame(swapped).value).toBeCloseTo(-solveMatrixGame(payoff).value, 6);
      }),
      { numRuns: 100 },
    );
  });

  it('does not mind the units: payoffs in thousandths or millions give the same mix', () => {
    for (const unit of [1e-3, 1e6]) {
      const got = solveMatrixGame([
        [-2 * unit, 3 * unit],
        [3 * unit, -4 * unit],
      ]);
      expect(got.value / unit).toBeCloseTo(1 / 12, 8);
      expect(got.row[0]).toBeCloseTo(7 / 12, 8);
    }
  });

  it('solves a game of one outcome and a game of one cell', () => {
    expect(
      solveMatrixGame([
        [3, 3],
        [3, 3],
      ]).value,
    ).toBe(3);
    expect(solveMatrixGame([[-7]])).toEqual({ value: -7, row: [1], col: [1] });
  });

  it.each([[[]], [[[]]], [[[1, 2], [1]]], [[[1, Number.NaN]]]])('refuses %j', (payoff) => {
    expect(() => solveMatrixGame(payoff)).toThrow(StatsInputError);
  });
});
