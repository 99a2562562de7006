import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { normalCdf, normalQuantile, normalWidth } from '../../src/stats/normal.ts';

describe('normal distribution', () => {
  const source = 'Abramowitz and Stegun 1964, tables 26.1 and 26.5; more digits from memory';
  it.each([
    { p: 0.5, x: 0, source },
    { p: 0.9, x: 1.2815515655446004, source },
    { p: 0.975, x: 1.959963984540054, source },
    { p: 0.995, x: 2.5758293035489004, source },
    { p: 0.0013498980316300933, x: -3, source },
  ])('quantile at $p is $x ($source)', ({ p, x }) => {
    expect(normalQuantile(p)).toBeCloseTo(x, 12);
    expect(normalCdf(x)).toBeCloseTo(p, 13);
  });

  it('the distribution function undoes the quantile', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-12, max: 1 - 1e-12, noNaN: true }), (p) => {
        expect(normalCdf(normalQuantile(p))).toBeCloseTo(p, 12);
      }),
    );
  });

  it('reaches the ends', () => {
    expect(normalQuantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(normalQuantile(1)).toBe(Number.POSITIVE_INFINITY);
    expect(normalCdf(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(normalCdf(Number.POSITIVE_INFINITY)).toBe(1);
  });

  it.each([-0.1, 1.1, Number.NaN])('refuses %s as a probability', (p) => {
    expect(() => normalQuantile(p)).toThrow(StatsInputError);
  });

  it.each([0, 1, 95, Number.NaN])('refuses %s as a confidence level', (level) => {
    expect(() => normalWidth(level)).toThrow(`a confidence level must lie between 0 and 1, got ${level}`);
  });

  it('refuses NaN', () => {
    expect(() => normalCdf(Number.NaN)).toThrow(StatsInputError);
  });
});
