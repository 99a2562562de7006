import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { betaBinomialInterval, betaBinomialPmf } from '../../src/stats/beta-binomial.ts';
import { StatsInputError } from '../../src/stats/errors.ts';
import { binomialProbability } from './binomial-probability.ts';

const count = fc.record({
  trials: fc.integer({ min: 0, max: 120 }),
  mean: fc.double({ min: 0, max: 1, noNaN: true }),
  concentration: fc.double({ min: 0.01, max: 1e9, noNaN: true }),
});

describe('beta-binomial probabilities', () => {
  it('are all 1 / (n + 1) for a uniform share (Bayes 1763)', () => {
    for (const p of betaBinomialPmf({ trials: 7, mean: 0.5, concentration: 2 })) expect(p).toBeCloseTo(1 / 8, 14);
  });

  it('for Beta(2, 3) and 2 trials are 12/30, 12/30, 6/30, by hand', () => {
    const pmf = betaBinomialPmf({ trials: 2, mean: 0.4, concentration: 5 });
    [0.4, 0.4, 0.2].forEach((p, k) => {
      expect(pmf[k]).toBeCloseTo(p, 13);
    });
  });

  it('sum to 1 and have mean trials x mean', () => {
    fc.assert(
      fc.property(count, (input) => {
        const pmf = betaBinomialPmf(input);
        let [total, first] = [0, 0];
        pmf.forEach((p, k) => {
          total += p;
          first += k * p;
        });
        expect(total).toBeCloseTo(1, 11);
        expect(first).toBeCloseTo(input.trials * input.mean, 6);
      }),
    );
  });

  it.each([Number.POSITIVE_INFINITY, 1e12])('become binomial at concentration %s', (concentration) => {
    betaBinomialPmf({ trials: 12, mean: 0.3, concentration }).forEach((p, k) => {
      expect(p).toBeCloseTo(binomialProbability(k, 12, 0.3), 9);
    });
  });

  it.each([0, 1])('a mean of %s is certain', (mean) => {
    const pmf = betaBinomialPmf({ trials: 4, mean, concentration: 10 });
    expect(pmf[mean * 4]).toBe(1);
  });

  it.each([
    { trials: 2.5, mean: 0.5, concentration: 1 },
    { trials: 2, mean: -0.1, concentration: 1 },
    { trials: 2, mean: 0.5, concentration: 0 },
    { trials: 2, mean: 0.5, concentration: Number.NaN },
  ])('refuse %j', (input) => {
    expect(() => betaBinomialPmf(input)).toThrow(StatsInputError);
  });
});

describe('beta-binomial interval', () => {
  it('of 12 even trials at 80% is 4 to 8 for a sure share', () => {
    // Binomial(12, 1/2): P(X <= 3) = 299/4096 = 0.073, P(X <= 4) = 794/4096 = 0.194
    const got = betaBinomialInterval({ trials: 12, mean: 0.5, concentration: Number.POSITIVE_INFINITY, level: 0.8 });
    expect(got).toEqual({ low: 4, high: 8 });
  });

  it('leaves at most half of what the level leaves on either side, and no shorter one does', () => {
    fc.assert(
      fc.property(count, fc.double({ min: 0.5, max: 0.99, noNaN: true }), (input, level) => {
        const { low, high } = betaBinomialInterval({ ...input, level });
        const pmf = betaBinomialPmf(input);
        const tail = (1 - level) / 2;
        const below = (end: number) => pmf.slice(0, end).reduce((a, b) => a + b, 0);
        const above = (end: number) => pmf.slice(end + 1).reduce((a, b) => a + b, 0);
        expect(below(low)).toBeLessThanOrEqual(tail + 1e-9);
        expect(above(high)).toBeLessThanOrEqual(tail + 1e-9);
        expect(below(low + 1)).toBeGreaterThan(tail - 1e-9);
        expect(above(high - 1)).toBeGreaterThan(tail - 1e-9);
      }),
    );
  });

  it('mirrors when success and failure swap', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 60 }),
        fc.double({ min: 0.5, max: 90, noNaN: true }),
        (trials, concentration) => {
          const there = betaBinomialInterval({ trials, mean: 0.25, concentration, level: 0.9 });
          const back = betaBinomialInterval({ trials, mean: 0.75, concentration, level: 0.9 });
          expect(back).toEqual({ low: trials - there.high, high: trials - there.low });
        },
      ),
    );
  });

  it('of no trial is 0 to 0', () => {
    expect(betaBinomialInterval({ trials: 0, mean: 0.5, concentration: 5, level: 0.8 })).toEqual({ low: 0, high: 0 });
  });

  it('refuses a level of 80', () => {
    expect(() => betaBinomialInterval({ trials: 1, mean: 0.5, concentration: 5, level: 80 })).toThrow(StatsInputError);
  });
});
