import stdlibCdf from '@stdlib/stats-base-dists-beta-cdf';
import stdlibQuantile from '@stdlib/stats-base-dists-beta-quantile';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { betaCdf, betaQuantile, digamma, logBeta, logGamma } from '../../src/stats/beta.ts';
import { StatsInputError } from '../../src/stats/errors.ts';

const shape = fc.double({ min: 0.5, max: 500, noNaN: true });
const probability = fc.double({ min: 1e-3, max: 1 - 1e-3, noNaN: true });

describe('beta distribution', () => {
  it('has quantiles for shapes however small, 0 where they are too small for a double', () => {
    const log = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true }).map((x) => 10 ** x);
    let zeros = 0;
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), log(-6, 0), log(-3, 4), (p, a, b) => {
        const quantile = betaQuantile(p, a, b);
        // Where it is 0 a value that is hardly a double leaves the whole of p below it.
        if (quantile === 0) zeros++;
        if (quantile === 0) expect(betaCdf(1e-290, a, b)).toBeGreaterThanOrEqual(p);
        else if (quantile < 1 - 1e-9) expect(betaCdf(quantile, a, b)).toBeCloseTo(p, 9);
        else expect(quantile).toBeLessThanOrEqual(1);
      }),
      { numRuns: 6000, seed: 1 },
    );
    expect(zeros).toBeGreaterThan(200);
    // The leading term x^a / (a B(a, b)), DLMF 8.17.7: 0.025 of a Beta(0.0036, 3.5) lies below some 10^-445.
    expect(betaQuantile(0.025, 0.0036, 3.5)).toBe(0);
  });

  it('quantiles agree with @stdlib/stats-base-dists-beta-quantile', () => {
    fc.assert(
      fc.property(probability, shape, shape, (p, a, b) => {
        const expected = stdlibQuantile(p, a, b);
        expect(Math.abs(betaQuantile(p, a, b) - expected)).toBeLessThan(1e-12);
      }),
      { numRuns: 500 },
    );
  });

  it('the distribution function undoes the quantile', () => {
    fc.assert(
      fc.property(probability, shape, shape, (p, a, b) => {
        expect(betaCdf(betaQuantile(p, a, b), a, b)).toBeCloseTo(p, 9);
      }),
      { numRuns: 500 },
    );
  });

  // Where Cephes' own product of gammas is no double: it returned 0 for the whole lower half.
  const corner = {
    small: fc.double({ min: 0.05, max: 0.99, noNaN: true }),
    large: fc.double({ min: 170.3, max: 171.6, noNaN: true }),
  };

  it('holds where the gammas of the shapes overflow (finite sum for whole b, from memory)', () => {
    fc.assert(
      fc.property(corner.small, fc.double({ min: 1e-6, max: 0.05, noNaN: true }), (a, x) => {
        let [term, sum] = [1, 1];
        for (let k = 1; k < 171; k += 1) {
          term *= ((a + k - 1) / k) * (1 - x);
          sum += term;
        }
        expect(betaCdf(x, a, 171)).toBeCloseTo(x ** a * sum, 9);
        expect(betaCdf(1 - x, 171, a)).toBeCloseTo(1 - x ** a * sum, 9);
      }),
      { numRuns: 500 },
    );
  });

  it('quantiles agree with @stdlib/stats-base-dists-beta-quantile there too', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), corner.small, corner.large, (p, a, b) => {
        expect(Math.abs(betaQuantile(p, a, b) - stdlibQuantile(p, a, b))).toBeLessThan(1e-12);
        expect(betaCdf(betaQuantile(p, a, b), a, b)).toBeCloseTo(p, 9);
      }),
      { numRuns: 300 },
    );
  });

  /** Shape sums around the largest argument with a gamma that is a double, small shapes, and where to ask. */
  const edge = Array.from({ length: 41 }, (_, i) => 171.6235 + i * 0.00003)
    .concat(171.6243769563, 171.6243769564)
    .flatMap((sum) => [0.004, 0.05, 0.122, 0.5, 0.93].map((small) => ({ small, large: sum - small })))
    .flatMap((shapes) => [1e-6, 1e-4, 0.001, 0.01, 0.05].map((x) => ({ ...shapes, x })));

  it('agrees with @stdlib/stats-base-dists-beta-cdf on a fine grid around the edge of the gamma function', () => {
    const errors = edge.flatMap(({ small, large, x }) => [
      Math.abs(betaCdf(x, small, large) - stdlibCdf(x, small, large)),
      Math.abs(betaCdf(1 - x, large, small) - stdlibCdf(1 - x, large, small)),
    ]);
    expect(errors).toHaveLength(2150);
    // The error the docstring owns up to, which Cephes' logarithms of gammas bring in above the edge.
    expect(Math.max(...errors)).toBeLessThan(2e-8);
  });

  it('quantiles agree with @stdlib/stats-base-dists-beta-quantile around that edge', () => {
    const errors = edge.map(({ small, large }) =>
      Math.abs(betaQuantile(0.3, small, large) - stdlibQuantile(0.3, small, large)),
    );
    expect(Math.max(...errors)).toBeLessThan(1e-9);
  });

  it('Beta(1, 1) is the uniform distribution', () => {
    expect(betaCdf(0.3, 1, 1)).toBeCloseTo(0.3, 14);
    expect(betaQuantile(0.3, 1, 1)).toBeCloseTo(0.3, 14);
  });

  it('Beta(2, 3) at 0.4 is 0.5248 (polynomial 1 - (1-x)^4 - 4x(1-x)^3 by hand)', () => {
    expect(betaCdf(0.4, 2, 3)).toBeCloseTo(1 - 0.6 ** 4 - 4 * 0.4 * 0.6 ** 3, 14);
  });

  it('is 0 below 0, 1 above 1, and quantiles reach both ends', () => {
    expect([betaCdf(-1, 2, 2), betaCdf(2, 2, 2)]).toEqual([0, 1]);
    expect([betaQuantile(0, 2, 2), betaQuantile(1, 2, 2)]).toEqual([0, 1]);
  });

  it.each([
    [0, 1],
    [1, -1],
    [Number.NaN, 1],
    [1, Number.POSITIVE_INFINITY],
  ])('refuses shapes %s and %s', (a, b) => {
    expect(() => betaCdf(0.5, a, b)).toThrow(StatsInputError);
    expect(() => betaQuantile(0.5, a, b)).toThrow(StatsInputError);
    expect(() => logBeta(a, b)).toThrow(StatsInputError);
  });

  it('refuses what is no probability', () => {
    expect(() => betaQuantile(1.5, 1, 1)).toThrow('betaQuantile requires a probability, got 1.5');
    expect(() => betaCdf(Number.NaN, 1, 1)).toThrow(StatsInputError);
  });
});

describe('gamma functions', () => {
  const source = 'Abramowitz and Stegun 1964, 6.1 and 6.3';
  it.each([
    { x: 1, logValue: 0, digammaValue: -0.5772156649015329, source },
    { x: 0.5, logValue: Math.log(Math.PI) / 2, digammaValue: -0.5772156649015329 - 2 * Math.LN2, source },
    { x: 5, logValue: Math.log(24), digammaValue: 25 / 12 - 0.5772156649015329, source },
  ])('at $x ($source)', ({ x, logValue, digammaValue }) => {
    expect(logGamma(x)).toBeCloseTo(logValue, 13);
    expect(digamma(x)).toBeCloseTo(digammaValue, 13);
  });

  it('logBeta(2, 3) is log 1/12', () => {
    expect(logBeta(2, 3)).toBeCloseTo(-Math.log(12), 13);
  });

  it.each([0, -1, Number.NaN])('refuse %s', (x) => {
    expect(() => logGamma(x)).toThrow(StatsInputError);
    expect(() => digamma(x)).toThrow(StatsInputError);
  });
});
