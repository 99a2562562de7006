import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { largestRemainder } from '../../src/stats/apportion.ts';
import { StatsInputError } from '../../src/stats/errors.ts';

const weights = fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 1, maxLength: 12 });
const seats = fc.integer({ min: 0, max: 200 });

describe('largest remainder', () => {
  it('gives every seat away, each entry its quota rounded down or up', () => {
    fc.assert(
      fc.property(weights, seats, (list, n) => {
        const total = list.reduce((a, b) => a + b, 0);
        fc.pre(total > 0);
        const got = largestRemainder(list, n);
        expect(got.reduce((a, b) => a + b, 0)).toBe(n);
        got.forEach((given, i) => {
          expect(Math.abs(given - (list[i]! / total) * n)).toBeLessThan(1 + 1e-8);
        });
      }),
    );
  });

  it('a larger weight never gets fewer seats', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 2, maxLength: 8 }), seats, (list, n) => {
        const got = largestRemainder(list, n);
        got.forEach((given, i) => {
          got.forEach((other, j) => {
            if (list[i]! > list[j]!) expect(given).toBeGreaterThanOrEqual(other);
          });
        });
      }),
    );
  });

  it('does not change when every weight is multiplied', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 8 }), seats, (list, n) => {
        expect(
          largestRemainder(
            list.map((w) => w * 0.1),
            n,
          ),
        ).toEqual(largestRemainder(list, n));
      }),
    );
  });

  it('a whole quota written as a binary fraction stays whole: 0.1 0.2 0.7 of 10', () => {
    expect(largestRemainder([0.1, 0.2, 0.7], 10)).toEqual([1, 2, 7]);
  });

  it('shows the Alabama paradox: one more seat costs the smallest entry one (from memory)', () => {
    expect(largestRemainder([6, 6, 2], 10)).toEqual([4, 4, 2]);
    expect(largestRemainder([6, 6, 2], 11)).toEqual([5, 5, 1]);
  });

  it('of zero weight gives nothing away', () => {
    expect(largestRemainder([0, 0], 7)).toEqual([0, 0]);
  });

  it.each([
    [[], 3],
    [[1, -1], 3],
    [[1], 2.5],
    [[1], -1],
  ])('refuses %j and %s seats', (list, n) => {
    expect(() => largestRemainder(list, n)).toThrow(StatsInputError);
  });
});
