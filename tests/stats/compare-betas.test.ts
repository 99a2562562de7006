import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logBeta } from '../../src/stats/beta.ts';
import { probabilityGreater } from '../../src/stats/compare-betas.ts';
import { StatsInputError } from '../../src/stats/errors.ts';
import { createRandom } from '../../src/stats/random.ts';

const whole = fc.record({ alpha: fc.integer({ min: 1, max: 60 }), beta: fc.integer({ min: 1, max: 60 }) });
const any = fc.record({
  alpha: fc.double({ min: 0.05, max: 5000, noNaN: true }),
  beta: fc.double({ min: 0.05, max: 5000, noNaN: true }),
});

/** The closed sum for whole shapes (Miller 2015, "Formulas for Bayesian A/B testing"). */
function closedForm(first: { alpha: number; beta: number }, second: { alpha: number; beta: number }): number {
  let sum = 0;
  for (let i = 0; i < first.alpha; i += 1) {
    const log = logBeta(second.alpha + i, first.beta + second.beta) - Math.log(first.beta + i);
    sum += Math.exp(log - logBeta(1 + i, first.beta) - logBeta(second.alpha, second.beta));
  }
  return sum;
}

describe('probability that one Beta share is larger', () => {
  it('agrees with the closed sum for whole shapes', () => {
    fc.assert(
      fc.property(whole, whole, (first, second) => {
        expect(probabilityGreater(first, second)).toBeCloseTo(closedForm(first, second), 9);
      }),
      { numRuns: 200 },
    );
  });

  it('against a uniform share is the mean, and against itself one half', () => {
    fc.assert(
      fc.property(any, (first) => {
        const mean = first.alpha / (first.alpha + first.beta);
        expect(probabilityGreater(first, { alpha: 1, beta: 1 })).toBeCloseTo(mean, 8);
        expect(probabilityGreater(first, first)).toBeCloseTo(0.5, 8);
      }),
    );
  });

  it('is one half against itself where Cephes alone gives 0 for the distribution function', () => {
    const shapes = { alpha: 0.12234299756267825, beta: 171.33115327323182 };
    expect(probabilityGreater(shapes, shapes)).toBeCloseTo(0.5, 8);
  });

  it('and the probability of the reverse sum to 1', () => {
    fc.assert(
      fc.property(any, any, (first, second) => {
        expect(probabilityGreater(first, second) + probabilityGreater(second, first)).toBeCloseTo(1, 8);
      }),
    );
  });

  it('agrees with draws where shapes are below 1', () => {
    const random = createRandom('compare');
    const share = (alpha: number, beta: number) => random.dirichlet([alpha, beta])[0]!;
    let hits = 0;
    for (let i = 0; i < 20_000; i += 1) if (share(0.3, 0.9) > share(0.5, 0.5)) hits += 1;
    const p = probabilityGreater({ alpha: 0.3, beta: 0.9 }, { alpha: 0.5, beta: 0.5 });
    expect(Math.abs(hits / 20_000 - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / 20_000));
  });

  it('refuses shapes of 0', () => {
    expect(() => probabilityGreater({ alpha: 0, beta: 1 }, { alpha: 1, beta: 1 })).toThrow(StatsInputError);
    expect(() => probabilityGreater({ alpha: 1, beta: 1 }, { alpha: 1, beta: Number.NaN })).toThrow(StatsInputError);
  });
});
