import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OPEN_DIFFERENCES } from '../../../src/pressure/evidence/open-data-table.ts';
import {
  familyTrust,
  pooledDifference,
  pooledEffects,
  trustedDifference,
} from '../../../src/pressure/evidence/open-data-trust.ts';

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

describe('how far a family is believed', () => {
  it('is not at all on takeaways, which do not differ between families by more than chance', () => {
    for (const family of ['three_under', 'four_under', 'hot', 'zero', 'seven_plus'] as const) {
      expect(familyTrust(family, 'takeaway')).toBe(0);
      expect(trustedDifference(family, 'takeaway')).toBeCloseTo(pooledDifference('takeaway'), 12);
    }
  });

  it('is more for a family seen often than for one seen rarely', () => {
    expect(familyTrust('three_under', 'loss')).toBeGreaterThan(familyTrust('hot', 'loss'));
    expect(familyTrust('man_free_five', 'points')).toBeGreaterThan(familyTrust('four_under', 'points'));
    expect(familyTrust('base', 'points')).toBe(1);
  });

  it('keeps a believed difference between the family and the pooled pressure', () => {
    for (const [family, own] of Object.entries(OPEN_DIFFERENCES)) {
      const pooled = pooledDifference('explosive');
      const kept = trustedDifference(family as keyof typeof OPEN_DIFFERENCES, 'explosive');
      expect(kept).toBeGreaterThanOrEqual(Math.min(pooled, own.explosive.value) - 1e-12);
      expect(kept).toBeLessThanOrEqual(Math.max(pooled, own.explosive.value) + 1e-12);
    }
    expect(trustedDifference('base', 'loss')).toBe(0);
  });
});
