import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitRelease } from '../../../src/pressure/protection/release-fit.ts';

const prior = { mu: 1, sigma: 0.3, worth: 20 };
const times = (...seconds: number[]) => ({ logTimes: seconds.map(Math.log), held: 0, heldPast: 1 });
const manyTimes = fc.array(fc.double({ min: 1, max: 5, noNaN: true }), { minLength: 1, maxLength: 40 });

describe('fitRelease', () => {
  it('agrees with the closed form of a normal mean with known spread when nothing is censored', () => {
    // Closed form: weighted mean of prior and sample, standard deviation sigma / sqrt(worth + n); textbook result.
    const found = fitRelease(times(3), prior);
    expect(found.mu).toBeCloseTo((20 * 1 + Math.log(3)) / 21, 6);
    expect(found.muHigh - found.mu).toBeCloseTo((1.2815515655 * 0.3) / Math.sqrt(21), 4);
    expect(found.mu - found.muLow).toBeCloseTo((1.2815515655 * 0.3) / Math.sqrt(21), 4);
  });

  it('is the prior when nothing was timed', () => {
    const found = fitRelease({ logTimes: [], held: 0, heldPast: 1 }, prior);
    expect(found.mu).toBeCloseTo(1, 9);
    expect(found.sigma).toBe(0.3);
    expect(found.muHigh - 1).toBeCloseTo((1.2815515655 * 0.3) / Math.sqrt(20), 4);
  });

  it('agrees with plain integration over 20,000 points when balls were still held', () => {
    // Reference: the posterior integrated on its own grid with a textbook error function.
    const seen = { logTimes: [0.9, 1.1], held: 3, heldPast: 1 };
    const found = fitRelease(seen, prior);
    let [sum, weights] = [0, 0];
    for (let i = 0; i < 20_000; i += 1) {
      const mu = 1 + (0.3 / Math.sqrt(20)) * (((i + 0.5) / 20_000) * 12 - 6);
      const density = Math.exp(-10 * ((mu - 1) / 0.3) ** 2);
      const thrown = seen.logTimes.reduce((p, x) => p * Math.exp(-(((x - mu) / found.sigma) ** 2) / 2), 1);
      const held = (0.5 * (1 + erf((mu - 1) / found.sigma / Math.SQRT2))) ** 3;
      sum += mu * density * thrown * held;
      weights += density * thrown * held;
    }
    expect(found.mu).toBeCloseTo(sum / weights, 4);
  });

  it('lies between the prior and the throws, and its interval holds it', () => {
    fc.assert(
      fc.property(manyTimes, (seconds) => {
        const { mu, muLow, muHigh } = fitRelease(times(...seconds), prior);
        const mean = seconds.reduce((sum, x) => sum + Math.log(x), 0) / seconds.length;
        expect(mu).toBeGreaterThanOrEqual(Math.min(1, mean) - 1e-6);
        expect(mu).toBeLessThanOrEqual(Math.max(1, mean) + 1e-6);
        expect(muLow).toBeLessThan(mu);
        expect(muHigh).toBeGreaterThan(mu);
      }),
      { numRuns: 50 },
    );
  });

  it('a ball held past the usual sack never makes them look faster', () => {
    fc.assert(
      fc.property(manyTimes, fc.nat(6), (seconds, held) => {
        const seen = times(...seconds);
        expect(fitRelease({ ...seen, held: held + 1 }, prior).mu).toBeGreaterThanOrEqual(
          fitRelease({ ...seen, held }, prior).mu - 1e-9,
        );
      }),
      { numRuns: 30 },
    );
  });

  it('slower throws give a slower curve of the same spread', () => {
    fc.assert(
      fc.property(manyTimes, fc.double({ min: 1.01, max: 1.5, noNaN: true }), (seconds, factor) => {
        const fast = fitRelease(times(...seconds), prior);
        const slow = fitRelease(times(...seconds.map((x) => x * factor)), prior);
        expect(slow.mu).toBeGreaterThan(fast.mu);
        expect(slow.sigma).toBeCloseTo(fast.sigma, 9);
      }),
      { numRuns: 30 },
    );
  });
});

/** Abramowitz and Stegun 1964, 7.1.26, to 1.5e-7. */
function erf(x: number): number {
  const t = 1 / (1 + 0.3275911 * Math.abs(x));
  const poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  return Math.sign(x) * (1 - poly * Math.exp(-x * x));
}
