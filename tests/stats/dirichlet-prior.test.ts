import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dirichletMoments, fitDirichlet } from '../../src/stats/dirichlet-prior.ts';
import { StatsInputError } from '../../src/stats/errors.ts';
import { createRandom } from '../../src/stats/random.ts';

const SMALL = [
  [3, 2, 5],
  [1, 6, 4],
  [7, 1, 2],
  [2, 2, 9],
];
const groups = fc.array(fc.array(fc.integer({ min: 0, max: 15 }), { minLength: 3, maxLength: 3 }), {
  minLength: 2,
  maxLength: 8,
});

describe('Dirichlet fit', () => {
  it('agrees with R dirmult::dirmult on a small table: 3.303212 2.880756 5.081282', () => {
    fitDirichlet(SMALL).alpha.forEach((alpha, j) => {
      expect(alpha).toBeCloseTo([3.303212, 2.880756, 5.081282][j]!, 3);
    });
  });

  it('finds the parameters that seeded groups were drawn with', () => {
    const random = createRandom('dirichlet');
    const truth = [2, 5, 1];
    const drawn = Array.from({ length: 400 }, () => {
      const shares = random.dirichlet(truth);
      const first = Array.from({ length: 60 }, random.uniform).map((u) =>
        u < shares[0]! ? 0 : u < 1 - shares[2]! ? 1 : 2,
      );
      return truth.map((_, j) => first.filter((category) => category === j).length);
    });
    // 400 groups leave a standard error of about 5%; the seed is fixed.
    fitDirichlet(drawn).alpha.forEach((alpha, j) => {
      expect(Math.abs(alpha / truth[j]! - 1)).toBeLessThan(0.15);
    });
  });

  it('follows its categories when these are reordered', () => {
    const turned = fitDirichlet(SMALL.map((row) => row.toReversed())).alpha.toReversed();
    fitDirichlet(SMALL).alpha.forEach((alpha, j) => {
      expect(turned[j]).toBeCloseTo(alpha, 5);
    });
  });

  it('gives next to nothing to a category never seen, and leaves the others as they were', () => {
    const got = fitDirichlet(SMALL.map((row) => [...row, 0])).alpha;
    expect(got[3]).toBeGreaterThan(0);
    expect(got[3]).toBeLessThan(1e-6);
    expect(got[0]).toBeCloseTo(fitDirichlet(SMALL).alpha[0]!, 8);
  });

  it('pools completely when groups are alike', () => {
    const got = fitDirichlet([
      [4, 8, 4],
      [4, 8, 4],
      [4, 8, 4],
    ]);
    expect(got.completePooling).toBe(true);
    // At a finite cap the likeliest shares are the pooled ones only up to one in a few hundred.
    expect(got.alpha[1]! / got.alpha[0]!).toBeCloseTo(2, 2);
  });

  it('every parameter is positive and finite, whatever was counted', () => {
    fc.assert(
      fc.property(groups, (counts) => {
        fc.pre(counts.flat().some((n) => n > 0));
        const { alpha, logLikelihood } = fitDirichlet(counts);
        expect(alpha.every((a) => a > 0 && Number.isFinite(a))).toBe(true);
        expect(logLikelihood).toBeLessThanOrEqual(1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it.each([[[[0, 0]]], [[]], [[[1, 2], [1]]], [[[1, -1]]]])('refuses %j', (counts) => {
    expect(() => fitDirichlet(counts)).toThrow(StatsInputError);
  });
});

describe('moment estimate', () => {
  it('agrees with R dirmult::weirMoM on the small table: 0.1535196', () => {
    expect(dirichletMoments(SMALL).correlation).toBeCloseTo(0.1535196, 7);
  });

  it('gives the pooled shares, which sum to 1', () => {
    fc.assert(
      fc.property(groups, (counts) => {
        const used = counts.filter((row) => row.some((n) => n > 0));
        fc.pre(used.length >= 2 && used.flat().reduce((a, b) => a + b, 0) > used.length);
        expect(dirichletMoments(counts).shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('is 1 when every group keeps to one category of its own', () => {
    expect(
      dirichletMoments([
        [9, 0],
        [0, 9],
      ]).correlation,
    ).toBeCloseTo(1, 12);
  });

  it('refuses a single group', () => {
    expect(() => dirichletMoments([[3, 4]])).toThrow(StatsInputError);
  });
});
