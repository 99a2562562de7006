import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { cohenKappa } from '../../src/stats/kappa.ts';

const square = fc.integer({ min: 2, max: 4 }).chain((size) =>
  fc.array(fc.array(fc.integer({ min: 0, max: 20 }), { minLength: size, maxLength: size }), {
    minLength: size,
    maxLength: size,
  }),
);

describe("Cohen's kappa", () => {
  it("of two dermatologists is 0.3449, 0.2030 to 0.4868 (SAS/STAT User's Guide, FREQ procedure, skin conditions)", () => {
    const got = cohenKappa([
      [10, 4, 1, 0],
      [5, 10, 12, 2],
      [2, 4, 12, 5],
      [0, 2, 6, 13],
    ]);
    expect([got.estimate, got.low, got.high].map((x) => x?.toFixed(4))).toEqual(['0.3449', '0.2030', '0.4868']);
  });

  it('of a 3 x 3 table is 0.4842, error 0.1380, 0.2137 to 0.7547 (SAS output in the tests of statsmodels)', () => {
    const got = cohenKappa([
      [0, 4, 1],
      [0, 8, 0],
      [0, 1, 5],
    ]);
    expect(got.estimate?.toFixed(4)).toBe('0.4842');
    expect(got.standardError?.toFixed(4)).toBe('0.1380');
    expect([got.low.toFixed(4), got.high.toFixed(4)]).toEqual(['0.2137', '0.7547']);
  });

  it('holds its estimate within -1 and 1, and is the same from both raters and in any order of categories', () => {
    fc.assert(
      fc.property(square, (table) => {
        const got = cohenKappa(table);
        fc.pre(got.estimate !== null);
        expect(got.low).toBeGreaterThanOrEqual(-1);
        expect(got.high).toBeLessThanOrEqual(1);
        expect(got.low <= got.estimate! + 1e-12 && got.estimate! <= got.high + 1e-12).toBe(true);
        const turned = cohenKappa(table[0]!.map((_, j) => table.map((row) => row[j]!)));
        const relabeled = cohenKappa(table.toReversed().map((row) => row.toReversed()));
        for (const other of [turned, relabeled]) {
          expect(other.estimate).toBeCloseTo(got.estimate!, 10);
          expect(other.standardError).toBeCloseTo(got.standardError!, 10);
        }
      }),
    );
  });

  it('is 1 with error 0 at full agreement, 0 at independence', () => {
    const full = cohenKappa([
      [5, 0],
      [0, 7],
    ]);
    expect(full.estimate).toBe(1);
    expect(full.standardError).toBeCloseTo(0, 12);
    expect(
      cohenKappa([
        [2, 4],
        [3, 6],
      ]).estimate,
    ).toBeCloseTo(0, 12);
  });

  it('has no estimate when both always name one category, or nothing was rated', () => {
    expect(
      cohenKappa([
        [9, 0],
        [0, 0],
      ]),
    ).toEqual({ estimate: null, standardError: null, agreement: 1, low: -1, high: 1 });
    expect(
      cohenKappa([
        [0, 0],
        [0, 0],
      ]),
    ).toEqual({ estimate: null, standardError: null, agreement: null, low: -1, high: 1 });
  });

  it('refuses a table that is not square', () => {
    expect(() =>
      cohenKappa([
        [1, 2, 3],
        [4, 5, 6],
      ]),
    ).toThrow('cohenKappa requires as many rows as columns');
    expect(() =>
      cohenKappa([
        [1, -2],
        [4, 5],
      ]),
    ).toThrow(StatsInputError);
  });
});
