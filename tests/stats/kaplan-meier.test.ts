import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { kaplanMeier } from '../../src/stats/kaplan-meier.ts';

const observations = fc.array(fc.tuple(fc.integer({ min: 0, max: 12 }), fc.boolean()), { maxLength: 25 });
const split = (pairs: [number, boolean][]) => [pairs.map(([t]) => t), pairs.map(([, e]) => e)] as const;

describe('Kaplan-Meier curve', () => {
  it('of the 6-MP arm: survival as in Cox and Oakes 1984, table 4.1, errors as in Klein and Moeschberger 2003', () => {
    // Freireich et al. 1963, weeks of remission; + marks a patient still in remission.
    const weeks = '6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+'.split(' ');
    const { steps, median } = kaplanMeier(
      weeks.map((w) => Number.parseInt(w, 10)),
      weeks.map((w) => !w.endsWith('+')),
    );
    expect(steps.map((s) => s.time)).toEqual([6, 7, 10, 13, 16, 22, 23]);
    expect(steps.map((s) => s.atRisk)).toEqual([21, 17, 15, 12, 11, 7, 6]);
    expect(steps.map((s) => s.survival.toFixed(4))).toEqual([
      '0.8571',
      '0.8067',
      '0.7529',
      '0.6902',
      '0.6275',
      '0.5378',
      '0.4482',
    ]);
    expect(steps.map((s) => s.standardError.toFixed(3))).toEqual([
      '0.076',
      '0.087',
      '0.096',
      '0.107',
      '0.114',
      '0.128',
      '0.135',
    ]);
    expect(median).toBe(23);
  });

  it('falls from step to step within 0 and 1, and does not mind the order of observations', () => {
    fc.assert(
      fc.property(observations, (pairs) => {
        const curve = kaplanMeier(...split(pairs));
        curve.steps.forEach(({ survival }, i) => {
          expect(survival).toBeLessThan(curve.steps[i - 1]?.survival ?? 1);
          expect(survival).toBeGreaterThanOrEqual(0);
        });
        expect(kaplanMeier(...split(pairs.toReversed()))).toEqual(curve);
      }),
    );
  });

  it('without censoring is the share that lasted longer, with the binomial error', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 8 }), { minLength: 1, maxLength: 20 }), (times) => {
        const n = times.length;
        for (const { time, survival, standardError } of kaplanMeier(
          times,
          times.map(() => true),
        ).steps) {
          const share = times.filter((t) => t > time).length / n;
          expect(survival).toBeCloseTo(share, 12);
          expect(standardError).toBeCloseTo(Math.sqrt((share * (1 - share)) / n), 12);
        }
      }),
    );
  });

  it('counts an event before an ending at the same time', () => {
    expect(kaplanMeier([3, 3], [true, false]).steps[0]?.atRisk).toBe(2);
  });

  it('takes the first time at which half are left as the median', () => {
    expect(kaplanMeier([1, 2, 3, 4], [true, true, true, true]).median).toBe(2);
    expect(kaplanMeier([1, 2, 3, 4], [true, false, false, false]).median).toBeNull();
  });

  it('without events has no step and no median', () => {
    expect(kaplanMeier([1, 2], [false, false])).toEqual({ steps: [], median: null });
    expect(kaplanMeier([], [])).toEqual({ steps: [], median: null });
  });

  it('refuses unequal lengths and impossible times', () => {
    expect(() => kaplanMeier([1], [])).toThrow(StatsInputError);
    expect(() => kaplanMeier([-1], [true])).toThrow(StatsInputError);
    expect(() => kaplanMeier([Number.NaN], [true])).toThrow(StatsInputError);
  });
});
