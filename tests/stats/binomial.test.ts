import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomialProbability, binomialTwoSided, binomialUpperTail, logChoose } from '../../src/stats/binomial.ts';
import { StatsInputError } from '../../src/stats/errors.ts';

const trial = fc
  .integer({ min: 0, max: 80 })
  .chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n), fc.double({ min: 0, max: 1, noNaN: true })));

describe('exact binomial test', () => {
  it('gives the p of the Mendelian example 682 of 925 at 3/4 (R help page of binom.test: p-value = 0.3825)', () => {
    expect(binomialTwoSided(682, 925, 0.75).toFixed(4)).toBe('0.3825');
  });

  it('doubles a symmetric tail: 8 of 10 at 1/2 is 2 (45 + 10 + 1) / 1024', () => {
    expect(binomialTwoSided(8, 10, 0.5)).toBeCloseTo(112 / 1024, 12);
    expect(binomialUpperTail(8, 10, 0.5)).toBeCloseTo(56 / 1024, 12);
  });

  it('the upper tail is the sum of the probabilities', () => {
    fc.assert(
      fc.property(trial, ([x, n, p]) => {
        let sum = 0;
        for (let k = x; k <= n; k += 1) sum += binomialProbability(k, n, p);
        expect(binomialUpperTail(x, n, p)).toBeCloseTo(sum, 10);
      }),
    );
  });

  it('mirrors under success and failure', () => {
    fc.assert(
      fc.property(trial, ([x, n, p]) => {
        expect(binomialTwoSided(x, n, p)).toBeCloseTo(binomialTwoSided(n - x, n, 1 - p), 6);
      }),
    );
  });

  it('has certain outcomes at the ends', () => {
    expect(binomialTwoSided(0, 0, 0.3)).toBe(1);
    expect(binomialTwoSided(1, 5, 0)).toBe(0);
    expect(binomialUpperTail(5, 5, 1)).toBe(1);
    expect(binomialUpperTail(0, 5, 0.2)).toBe(1);
  });

  it('counts choices: 52 over 5 is 2598960', () => {
    expect(Math.exp(logChoose(52, 5))).toBeCloseTo(2598960, 4);
  });

  it.each([
    [3, 2, 0.5],
    [1, 2, 1.5],
    [0.5, 2, 0.5],
    [-1, 2, 0.5],
  ])('refuses %s of %s at %s', (x, n, p) => {
    expect(() => binomialTwoSided(x, n, p)).toThrow(StatsInputError);
    expect(() => binomialUpperTail(x, n, p)).toThrow(StatsInputError);
  });
});
