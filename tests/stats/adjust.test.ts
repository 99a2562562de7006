import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { benjaminiHochberg } from '../../src/stats/adjust.ts';
import { StatsInputError } from '../../src/stats/errors.ts';

const THROMBOLYSIS = [
  0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528, 0.759, 1,
];
const pValues = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 30 });

describe('Benjamini-Hochberg', () => {
  it('rejects 4 of 15 at 0.05 in the thrombolysis trial (Benjamini and Hochberg 1995)', () => {
    expect(benjaminiHochberg(THROMBOLYSIS).filter((p) => p <= 0.05)).toHaveLength(4);
  });

  it('counts tests that are not shown: m = 30 doubles the first values', () => {
    const [first, second] = benjaminiHochberg(THROMBOLYSIS, 30);
    expect(first).toBeCloseTo(0.003, 12);
    expect(second).toBeCloseTo(0.006, 12);
  });

  it('keeps the order of its input', () => {
    const got = benjaminiHochberg([0.0459, 0.0001, 1, 0.0095, 0.0019]);
    [0.057375, 0.0005, 1, 0.0158333333333333, 0.00475].forEach((e, i) => {
      expect(got[i]).toBeCloseTo(e, 12); // R 4.2.2, p.adjust(method = "BH")
    });
  });
});

describe('adjusted p-values', () => {
  it('never lowers a p-value, never passes 1 and keeps the ranking', () => {
    fc.assert(
      fc.property(pValues, (p) => {
        const got = benjaminiHochberg(p);
        got.forEach((value, i) => {
          expect(value).toBeGreaterThanOrEqual(p[i]! * (1 - 1e-12));
          expect(value).toBeLessThanOrEqual(1);
          got.forEach((other, j) => {
            if (p[i]! < p[j]!) expect(value).toBeLessThanOrEqual(other);
          });
        });
      }),
    );
  });

  it('follows the values when they are reordered', () => {
    fc.assert(
      fc.property(pValues, (p) => {
        expect(benjaminiHochberg(p.toReversed())).toEqual(benjaminiHochberg(p).toReversed());
      }),
    );
  });

  it('rises with the number of tests', () => {
    fc.assert(
      fc.property(pValues, fc.integer({ min: 0, max: 100 }), (p, more) => {
        const few = benjaminiHochberg(p);
        benjaminiHochberg(p, p.length + more).forEach((value, i) => {
          expect(value).toBeGreaterThanOrEqual(few[i]! * (1 - 1e-12));
        });
      }),
    );
  });

  it('of nothing is nothing', () => {
    expect(benjaminiHochberg([])).toEqual([]);
  });

  it('refuses what is no probability and too small a number of tests', () => {
    expect(() => benjaminiHochberg([0.5, 1.5])).toThrow('a p-value must lie between 0 and 1, got 1.5');
    expect(() => benjaminiHochberg([Number.NaN])).toThrow(StatsInputError);
    expect(() => benjaminiHochberg([0.1, 0.2], 1)).toThrow(
      'the number of tests must be a whole number of at least 2, got 1',
    );
  });
});
