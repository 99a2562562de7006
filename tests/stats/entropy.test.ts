import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ENTROPY_ESTIMATORS, entropy } from '../../src/stats/entropy.ts';
import { StatsInputError } from '../../src/stats/errors.ts';

const counts = fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 8 });
/** The example of the manual of the R package entropy. */
const MANUAL = [4, 2, 3, 0, 2, 4, 0, 0, 2, 1, 1];

describe('entropy', () => {
  it.each([
    { estimator: 'plug-in', nats: 1.968382408728 },
    { estimator: 'chao-shen', nats: 2.201137101279 },
  ] as const)('$estimator agrees with R entropy on the example of its manual', ({ estimator, nats }) => {
    expect(entropy(MANUAL, estimator)).toBeCloseTo(nats, 11);
  });

  it('Chao-Shen of singletons alone keeps one in reserve (R entropy::entropy.ChaoShen: 3.840549310406)', () => {
    expect(entropy([1, 1, 1, 1, 1, 1], 'chao-shen')).toBeCloseTo(3.840549310406, 11);
  });

  it('of 1/2 1/4 1/8 1/8 is 7/4 bits (Cover and Thomas, example 2.1.2; from memory)', () => {
    expect(entropy([16, 8, 4, 4], 'plug-in', 'bits')).toBeCloseTo(1.75, 13);
  });

  it('plug-in lies between 0 and the logarithm of the categories', () => {
    fc.assert(
      fc.property(counts, (list) => {
        const value = entropy(list);
        fc.pre(value !== null);
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(Math.log(list.length) + 1e-12);
      }),
    );
  });

  it.each(ENTROPY_ESTIMATORS)('%s does not mind the order of categories or empty ones', (estimator) => {
    fc.assert(
      fc.property(counts, (list) => {
        const value = entropy(list, estimator);
        const other = entropy([0, ...list.toReversed(), 0], estimator);
        if (value === null) expect(other).toBeNull();
        else expect(other).toBeCloseTo(value, 10);
      }),
    );
  });

  it.each(ENTROPY_ESTIMATORS)('%s of many even counts is the logarithm of the categories', (estimator) => {
    expect(entropy([5000, 5000, 5000, 5000], estimator)).toBeCloseTo(Math.log(4), 3);
  });

  it.each(ENTROPY_ESTIMATORS)('%s of one category is 0, of nothing null', (estimator) => {
    expect(entropy([17], estimator)).toBe(0);
    expect(entropy([0, 1], estimator)).toBe(0);
    expect(entropy([0, 0, 0], estimator)).toBeNull();
  });

  it('the corrections raise the plug-in: it is too small on average', () => {
    for (const estimator of ENTROPY_ESTIMATORS.slice(1)) {
      expect(entropy(MANUAL, estimator)).toBeGreaterThan(entropy(MANUAL) ?? Number.NaN);
    }
  });

  it.each([[[]], [[1, -1]], [[Number.NaN]]])('refuses %j', (list) => {
    expect(() => entropy(list)).toThrow(StatsInputError);
  });
});
