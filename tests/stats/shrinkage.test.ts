import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { betaMoments, betaPosterior, fitBeta, naiveBetaMoments, type Tally } from '../../src/stats/shrinkage.ts';
import { RAT_TUMOURS } from './rat-tumours.ts';

const tallies = fc.array(
  fc
    .integer({ min: 0, max: 30 })
    .chain((trials) => fc.record({ successes: fc.integer({ min: 0, max: trials }), trials: fc.constant(trials) })),
  { minLength: 2, maxLength: 12 },
);
const mirrored = (list: readonly Tally[]) =>
  list.map(({ successes, trials }) => ({ successes: trials - successes, trials }));
const trialsIn = (list: readonly Tally[]) => list.reduce((sum, { trials }) => sum + trials, 0);

describe('the 70 rat tumour groups', () => {
  it('have the maximum likelihood 2.3048, 14.0797 that the BayesGOF vignette prints', () => {
    const got = fitBeta(RAT_TUMOURS);
    expect(got.alpha).toBeCloseTo(2.304768, 3);
    expect(got.beta).toBeCloseTo(14.079707, 3);
    expect(got.completePooling).toBe(false);
  });

  it('have the raw moments 1.4, 8.6 (Gelman et al., Bayesian Data Analysis, section 5.1; from memory)', () => {
    const got = naiveBetaMoments(RAT_TUMOURS);
    expect([got?.alpha.toFixed(1), got?.beta.toFixed(1)]).toEqual(['1.4', '8.6']);
  });

  it('a prior Beta(1.4, 8.6) and 4 of 14 give Beta(5.4, 18.6) with mean 0.225 (same section; from memory)', () => {
    const got = betaPosterior({ alpha: 1.4, beta: 8.6, successes: 4, trials: 14 });
    expect(got.alpha).toBeCloseTo(5.4, 12);
    expect(got.beta).toBeCloseTo(18.6, 12);
    expect(got.mean).toBeCloseTo(0.225, 12);
    expect(got.low).toBeLessThan(got.mean);
    expect(got.high).toBeGreaterThan(got.mean);
  });
});

describe('Beta fit', () => {
  it('mirrors when successes and failures swap, and does not mind the order of groups', () => {
    fc.assert(
      fc.property(tallies, (list) => {
        fc.pre(trialsIn(list) > 0);
        const there = fitBeta(list);
        expect(fitBeta(mirrored(list)).logLikelihood).toBeCloseTo(there.logLikelihood, 5);
        expect(fitBeta(list.toReversed()).logLikelihood).toBeCloseTo(there.logLikelihood, 5);
      }),
      { numRuns: 40 },
    );
  });

  it('is at least as likely as its neighbours', () => {
    const { alpha, beta, logLikelihood } = fitBeta(RAT_TUMOURS);
    for (const [a, b] of [
      [1.05, 1],
      [0.95, 1],
      [1, 1.05],
      [1, 0.95],
    ] as const) {
      expect(ratLikelihood(alpha * a, beta * b)).toBeLessThan(logLikelihood);
    }
    expect(ratLikelihood(alpha, beta)).toBeCloseTo(logLikelihood, 7);
  });

  it('pools completely when groups differ less than chance would have it', () => {
    const got = fitBeta([5, 5, 5, 5].map((successes) => ({ successes, trials: 10 })));
    expect(got.completePooling).toBe(true);
    expect(got.alpha / (got.alpha + got.beta)).toBeCloseTo(0.5, 6);
    expect(got.alpha + got.beta).toBeGreaterThan(1900);
  });

  it.each([0, 10])('stays finite when every trial went one way: %s of 10', (successes) => {
    const got = fitBeta([
      { successes, trials: 10 },
      { successes, trials: 10 },
    ]);
    expect(got.alpha).toBeGreaterThan(0);
    expect(got.beta).toBeGreaterThan(0);
    expect(got.alpha / (got.alpha + got.beta)).toBeCloseTo((2 * successes + 0.5) / 21, 12);
  });

  it('ignores empty groups and refuses to fit nothing', () => {
    const full = [
      { successes: 2, trials: 9 },
      { successes: 7, trials: 11 },
    ];
    expect(fitBeta([...full, { successes: 0, trials: 0 }])).toEqual(fitBeta(full));
    expect(() => fitBeta([{ successes: 0, trials: 0 }])).toThrow(StatsInputError);
    expect(() => fitBeta([{ successes: 3, trials: 2 }])).toThrow(StatsInputError);
    expect(() => fitBeta([{ successes: 0.5, trials: 2 }])).toThrow(StatsInputError);
  });
});

/** Log likelihood of the rat data under Beta(a, b), term by term as products: independent of the code under test. */
function ratLikelihood(a: number, b: number): number {
  let sum = 0;
  for (const { successes, trials } of RAT_TUMOURS) {
    for (let k = 0; k < successes; k += 1) sum += Math.log((a + k) * (trials - k)) - Math.log(k + 1);
    for (let k = 0; k < trials - successes; k += 1) sum += Math.log(b + k);
    for (let k = 0; k < trials; k += 1) sum -= Math.log(a + b + k);
  }
  return sum;
}

describe('moment estimate', () => {
  it('lies within 0 and 1 and mirrors under success and failure', () => {
    fc.assert(
      fc.property(tallies, (list) => {
        const used = list.filter(({ trials }) => trials > 0);
        fc.pre(used.length >= 2 && trialsIn(used) > used.length);
        const got = betaMoments(list);
        expect(got.correlation).toBeGreaterThanOrEqual(0);
        expect(got.correlation).toBeLessThanOrEqual(1 + 1e-12);
        const back = betaMoments(mirrored(list));
        expect(back.correlation).toBeCloseTo(got.correlation, 10);
        expect(back.mean).toBeCloseTo(1 - got.mean, 10);
      }),
    );
  });

  it('has no finite size when groups differ less than chance would have it', () => {
    const got = betaMoments([5, 5, 5].map((successes) => ({ successes, trials: 10 })));
    expect(got).toEqual({ correlation: 0, mean: 0.5, size: null });
  });

  it('refuses a single group', () => {
    expect(() => betaMoments([{ successes: 1, trials: 9 }])).toThrow(StatsInputError);
  });

  it('raw moments do not exist when the shares are all alike, and need trials everywhere', () => {
    expect(
      naiveBetaMoments([
        { successes: 1, trials: 2 },
        { successes: 2, trials: 4 },
      ]),
    ).toBeNull();
    expect(() =>
      naiveBetaMoments([
        { successes: 0, trials: 0 },
        { successes: 2, trials: 4 },
      ]),
    ).toThrow(StatsInputError);
  });
});

describe('posterior', () => {
  it('has its mean between the raw share and the prior', () => {
    const shape = fc.double({ min: 0.1, max: 50, noNaN: true });
    const prior = fc.record({ alpha: shape, beta: shape });
    const tally = fc
      .integer({ min: 1, max: 20 })
      .chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));
    fc.assert(
      fc.property(prior, tally, ({ alpha, beta }, [successes, trials]) => {
        const { mean, low, high } = betaPosterior({ alpha, beta, successes, trials });
        const [raw, before] = [successes / trials, alpha / (alpha + beta)];
        expect(mean).toBeGreaterThanOrEqual(Math.min(raw, before) - 1e-12);
        expect(mean).toBeLessThanOrEqual(Math.max(raw, before) + 1e-12);
        expect(0 <= low && low < high && high <= 1).toBe(true);
      }),
    );
  });

  it('is the prior after no trial', () => {
    expect(betaPosterior({ alpha: 2, beta: 2, successes: 0, trials: 0 }).mean).toBe(0.5);
  });

  it('refuses impossible input', () => {
    expect(() => betaPosterior({ alpha: 1, beta: 1, successes: 2, trials: 1 })).toThrow(StatsInputError);
    expect(() => betaPosterior({ alpha: 0, beta: 1, successes: 0, trials: 1 })).toThrow(StatsInputError);
    expect(() => betaPosterior({ alpha: 1, beta: 1, successes: 0, trials: 1, level: 1 })).toThrow(StatsInputError);
  });
});
