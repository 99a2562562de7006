import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { transposed } from '../../src/stats/contingency-table.ts';
import { StatsInputError } from '../../src/stats/errors.ts';
import { gTest, gTestOfFit } from '../../src/stats/g-test.ts';

const table = fc.array(fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 3, maxLength: 3 }), {
  minLength: 2,
  maxLength: 4,
});

describe('G-test of independence', () => {
  it('of the vaccine example is G 2.14, 1 df, p 0.14 (McDonald, Handbook of Biological Statistics; from memory)', () => {
    const got = gTest([
      [4758, 30],
      [8840, 76],
    ]);
    expect([got.g.toFixed(2), got.degrees, got.p.toFixed(2)]).toEqual(['2.14', 1, '0.14']);
  });

  it('counts an empty cell as 0 log 0 = 0', () => {
    expect(
      gTest([
        [10, 0],
        [5, 5],
      ]).g,
    ).toBeCloseTo(2 * (10 * Math.log(10 / 7.5) + 5 * Math.log(5 / 7.5) + 5 * Math.log(2)), 12);
  });

  it('does not mind order or direction, and is 0 for proportional rows', () => {
    fc.assert(
      fc.property(table, (counts) => {
        const { g, degrees } = gTest(counts);
        expect(gTest(counts.toReversed()).g).toBeCloseTo(g, 9);
        expect(gTest(transposed(counts)).g).toBeCloseTo(g, 9);
        expect(gTest(transposed(counts)).degrees).toBe(degrees);
      }),
    );
    expect(
      gTest([
        [2, 4, 6],
        [1, 2, 3],
      ]).g,
    ).toBeCloseTo(0, 12);
  });

  it('drops empty rows and columns before it counts degrees of freedom', () => {
    expect(
      gTest([
        [5, 0, 3],
        [0, 0, 0],
        [2, 0, 6],
      ]),
    ).toEqual(
      gTest([
        [5, 3],
        [2, 6],
      ]),
    );
  });

  it('has nothing to test with one used row', () => {
    expect(
      gTest([
        [3, 4],
        [0, 0],
      ]),
    ).toMatchObject({ g: 0, degrees: 0, p: 1 });
    expect(gTest([])).toMatchObject({ g: 0, degrees: 0, p: 1 });
  });
});

describe('G-test of fit', () => {
  it('of 1752 and 1895 crossbills is G 5.61, p 0.018 (McDonald, Handbook of Biological Statistics; from memory)', () => {
    const got = gTestOfFit([1752, 1895], [0.5, 0.5]);
    expect([got.g.toFixed(2), got.degrees, got.p.toFixed(3)]).toEqual(['5.61', 1, '0.018']);
  });

  it('is 0 where the counts are as expected, and drops a category that cannot come', () => {
    expect(gTestOfFit([10, 20, 0], [1 / 3, 2 / 3, 0])).toMatchObject({ g: 0, degrees: 1, p: 1 });
    expect(gTestOfFit([10], [1])).toEqual({ g: 0, degrees: 0, p: 1 });
  });

  it.each([
    [
      [1, 2],
      [0.5, 0.6],
    ],
    [[1, 2], [1]],
    [
      [1, 2],
      [0, 1],
    ],
    [
      [1, 2],
      [-0.5, 1.5],
    ],
  ])('refuses %j against %j', (counts, shares) => {
    expect(() => gTestOfFit(counts, shares)).toThrow(StatsInputError);
  });
});
