import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { transposed } from '../../src/stats/contingency-table.ts';
import { StatsInputError } from '../../src/stats/errors.ts';
import { fisherExact } from '../../src/stats/fisher.ts';
import { mutualInformation, mutualInformationTest } from '../../src/stats/mutual-information.ts';
import { permutationP } from '../../src/stats/permutation.ts';

const table = fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 5 })).chain(([rows, columns]) =>
  fc.array(fc.array(fc.integer({ min: 0, max: 20 }), { minLength: columns, maxLength: columns }), {
    minLength: rows,
    maxLength: rows,
  }),
);

describe('mutual information', () => {
  it('of the joint distribution of Cover and Thomas, example 2.2.1, is 3/8 bit (from memory)', () => {
    const got = mutualInformation(
      [
        [4, 2, 1, 1],
        [2, 4, 1, 1],
        [2, 2, 2, 2],
        [8, 0, 0, 0],
      ],
      'bits',
    );
    expect(got?.row).toBeCloseTo(2, 12);
    expect(got?.column).toBeCloseTo(7 / 4, 12);
    expect(got?.joint).toBeCloseTo(27 / 8, 12);
    expect(got?.value).toBeCloseTo(3 / 8, 12);
  });

  it('is at least 0, at most either entropy, and the same from both sides', () => {
    fc.assert(
      fc.property(table, (counts) => {
        const got = mutualInformation(counts);
        fc.pre(got !== null);
        expect(got.value).toBeGreaterThanOrEqual(0);
        expect(got.value).toBeLessThanOrEqual(Math.min(got.row, got.column) + 1e-10);
        const turned = mutualInformation(transposed(counts));
        expect(turned?.value).toBeCloseTo(got.value, 10);
        expect(turned?.row).toBeCloseTo(got.column, 10);
      }),
    );
  });

  it('does not change when categories are relabeled', () => {
    fc.assert(
      fc.property(table, (counts) => {
        const value = mutualInformation(counts)?.value ?? 0;
        const turned = counts.toReversed().map((row) => row.toReversed());
        expect(mutualInformation(turned)?.value ?? 0).toBeCloseTo(value, 10);
      }),
    );
  });

  it('of an empty table is null', () => {
    expect(
      mutualInformation([
        [0, 0],
        [0, 0],
      ]),
    ).toBeNull();
    expect(mutualInformation([])).toBeNull();
  });

  it('refuses a ragged table', () => {
    expect(() => mutualInformation([[1, 2], [1]])).toThrow('a table requires rows of equal length');
  });
});

describe('permutation test', () => {
  it("of the tea tasting is Fisher's 34/70, within 4.5 Monte Carlo standard errors", () => {
    const p =
      mutualInformationTest({
        table: [
          [3, 1],
          [1, 3],
        ],
        permutations: 9999,
        seed: 'tea',
      })?.p ?? Number.NaN;
    const exact = fisherExact({
      table: [
        [3, 1],
        [1, 3],
      ],
      seed: 1,
    }).p;
    expect(exact).toBeCloseTo(34 / 70, 12);
    expect(Math.abs(p - exact)).toBeLessThan(4.5 * Math.sqrt((exact * (1 - exact)) / 9999));
  });

  it('repeats for the same seed', () => {
    const run = () =>
      mutualInformationTest({
        table: [
          [5, 1, 2],
          [2, 6, 3],
        ],
        permutations: 199,
        seed: 3,
      });
    expect(run()).toEqual(run());
  });

  it('finds nothing in an independent table and the least possible p in a perfect one', () => {
    expect(
      mutualInformationTest({
        table: [
          [6, 6],
          [6, 6],
        ],
        permutations: 199,
        seed: 1,
      })?.p,
    ).toBe(1);
    const perfect = mutualInformationTest({
      table: [
        [20, 0],
        [0, 20],
      ],
      permutations: 199,
      seed: 1,
    });
    expect(perfect?.p).toBe(1 / 200);
    expect(perfect?.observed).toBeCloseTo(Math.LN2, 12);
  });

  it('shows what chance alone gives: .136 bits for 6 by 5 even categories at 120 observations', () => {
    // Expected bias of the plug-in, (6 - 1)(5 - 1) / (2 n ln 2) bits: Miller 1955.
    const got = mutualInformationTest({
      table: Array.from({ length: 6 }, () => [4, 4, 4, 4, 4]),
      permutations: 999,
      seed: 2,
    });
    expect((got?.nullMean ?? 0) / Math.LN2).toBeCloseTo(0.13, 1);
    expect((got?.nullMean ?? 0) / Math.LN2).toBeGreaterThan(0.12);
  });

  it('is never 0: (0 + 1) / (999 + 1) (Phipson and Smyth 2010)', () => {
    expect(permutationP(0, 999)).toBe(0.001);
    expect(permutationP(999, 999)).toBe(1);
  });

  it('of an empty table is null', () => {
    expect(mutualInformationTest({ table: [[0, 0]], seed: 1 })).toBeNull();
  });

  it('refuses fractions and no permutation', () => {
    expect(() => mutualInformationTest({ table: [[0.5, 1]], seed: 1 })).toThrow(StatsInputError);
    expect(() => mutualInformationTest({ table: [[1, 1]], permutations: 0, seed: 1 })).toThrow(StatsInputError);
    expect(() => permutationP(3, 2)).toThrow(StatsInputError);
  });
});
