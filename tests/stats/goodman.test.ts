import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { goodmanIntervals } from '../../src/stats/goodman.ts';
import { normalQuantile } from '../../src/stats/normal.ts';
import { wilsonInterval } from '../../src/stats/proportion-interval.ts';

const categories = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 2, maxLength: 7 });

describe('Goodman intervals', () => {
  it('agree with the table printed for the data of May and Johnson 2000', () => {
    const printed = goodmanIntervals([56, 72, 73, 59, 62, 87, 58]).map((i) => [i.low.toFixed(3), i.high.toFixed(3)]);
    expect(printed).toEqual([
      ['0.085', '0.166'],
      ['0.115', '0.204'],
      ['0.116', '0.207'],
      ['0.091', '0.173'],
      ['0.096', '0.181'],
      ['0.143', '0.239'],
      ['0.089', '0.171'],
    ]);
  });

  it('use chi-square with one degree of freedom at 1 - alpha / k', () => {
    const z = normalQuantile(1 - 0.05 / 6);
    const [first] = goodmanIntervals([4, 5, 6]);
    const root = Math.sqrt(z ** 4 + (4 * z * z * 4 * 11) / 15);
    expect(first?.low).toBeCloseTo((z * z + 8 - root) / (2 * (15 + z * z)), 12);
  });

  it('hold every share, stay within [0, 1] and are wider than single intervals', () => {
    fc.assert(
      fc.property(categories, (counts) => {
        const total = counts.reduce((a, b) => a + b, 0);
        fc.pre(total > 0);
        goodmanIntervals(counts).forEach(({ low, high }, i) => {
          const single = wilsonInterval(counts[i]!, total);
          expect(0 <= low && low <= counts[i]! / total && counts[i]! / total <= high && high <= 1).toBe(true);
          expect(high - low).toBeGreaterThan(single.high - single.low);
        });
      }),
    );
  });

  it('follow their categories when these are reordered', () => {
    fc.assert(
      fc.property(categories, (counts) => {
        expect(goodmanIntervals(counts.toReversed())).toEqual(goodmanIntervals(counts).toReversed());
      }),
    );
  });

  it('know nothing when nothing was counted', () => {
    expect(goodmanIntervals([0, 0])).toEqual([
      { low: 0, high: 1 },
      { low: 0, high: 1 },
    ]);
  });

  it.each([[[]], [[1, -1]], [[1, Number.NaN]]])('refuse %j', (counts) => {
    expect(() => goodmanIntervals(counts)).toThrow(StatsInputError);
  });
});
