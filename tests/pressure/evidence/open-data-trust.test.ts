import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OPEN_DIFFERENCES } from '../../../src/pressure/evidence/open-data-table.ts';
import { pooledEffects, shrunkEffect } from '../../../src/pressure/evidence/open-data-trust.ts';

// Thirteen trials of a tuberculosis vaccine, log risk ratios and their variances (Colditz et al. 1994).
const VACCINE = [
  [-0.8893, 0.3256],
  [-1.5854, 0.1946],
  [-1.3481, 0.4154],
  [-1.4416, 0.02],
  [-0.2175, 0.0512],
  [-0.7861, 0.0069],
  [-1.6209, 0.223],
  [0.012, 0.004],
  [-0.4694, 0.0564],
  [-1.3713, 0.073],
  [-0.3394, 0.0124],
  [0.4459, 0.5325],
  [-0.0173, 0.0714],
] as const;

describe('effects of several groups', () => {
  it('have the published variance between the vaccine trials, 0.309 (R metafor 4, rma, method DL; from memory)', () => {
    const effects = VACCINE.map(([value, variance]) => ({ value, error: Math.sqrt(variance) }));
    expect(pooledEffects(effects).between).toBeCloseTo(0.3088, 2);
  });

  it('have none when their errors explain the spread', () => {
    expect(
      pooledEffects([
        { value: 0, error: 1 },
        { value: 0.5, error: 1 },
      ]).between,
    ).toBe(0);
  });

  it('pool to a mean between the least and the greatest', () => {
    const effect = fc.record({
      value: fc.double({ min: -3, max: 3, noNaN: true }),
      error: fc.double({ min: 0.1, max: 2, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(effect, { minLength: 2, maxLength: 9 }), (effects) => {
        const { mean, between } = pooledEffects(effects);
        const values = effects.map(({ value }) => value);
        expect(mean).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
        expect(mean).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
        expect(between).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe('one group among several', () => {
  const pooled = { mean: 1, between: 0.04, error: 0.1 };

  it('is pulled to the mean by the variance between groups over itself and its own (Efron and Morris 1975)', () => {
    const { value, error } = shrunkEffect({ value: 2, error: 0.2 }, pooled);
    expect(value).toBeCloseTo(1.5, 12);
    expect(error).toBeCloseTo(Math.sqrt(0.02), 12);
  });

  it('is the mean where groups do not differ by more than chance', () => {
    expect(shrunkEffect({ value: 9, error: 1 }, { ...pooled, between: 0 })).toEqual({ value: 1, error: 0 });
  });
});

describe('the families of open play data', () => {
  it('differ in points by a true standard deviation of about 0.02 a snap', () => {
    const points = pooledEffects(Object.values(OPEN_DIFFERENCES).map((difference) => difference.points));
    expect(Math.sqrt(points.between)).toBeGreaterThan(0.01);
    expect(Math.sqrt(points.between)).toBeLessThan(0.04);
    expect(points.mean).toBeCloseTo(-0.047, 2);
  });
});
