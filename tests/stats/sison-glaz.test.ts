import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { sisonGlazIntervals } from '../../src/stats/sison-glaz.ts';

describe('Sison-Glaz intervals', () => {
  it('agree with the CoinMinD manual to the four digits it prints', () => {
    const printed = sisonGlazIntervals([44, 55, 43, 32, 67, 78]).map((i) => [i.low.toFixed(4), i.high.toFixed(4)]);
    expect(printed).toEqual([
      ['0.0846', '0.1929'],
      ['0.1191', '0.2273'],
      ['0.0815', '0.1897'],
      ['0.0470', '0.1552'],
      ['0.1567', '0.2650'],
      ['0.1912', '0.2994'],
    ]);
  });

  it('hold every share within [0, 1] and widen with the level', () => {
    const counts = fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(counts, (list) => {
        const total = list.reduce((a, b) => a + b, 0);
        const narrow = sisonGlazIntervals(list, 0.8);
        sisonGlazIntervals(list, 0.95).forEach(({ low, high }, i) => {
          const share = list[i]! / total;
          expect(0 <= low && low <= share && share <= high && high <= 1).toBe(true);
          expect(high - low).toBeGreaterThanOrEqual(narrow[i]!.high - narrow[i]!.low - 1e-12);
        });
      }),
      { numRuns: 50 },
    );
  });

  it('follow their categories when these are reordered', () => {
    const [a, b, c] = sisonGlazIntervals([12, 30, 9]);
    const turned = sisonGlazIntervals([9, 30, 12]);
    [c, b, a].forEach((interval, i) => {
      expect(turned[i]!.low).toBeCloseTo(interval!.low, 12);
      expect(turned[i]!.high).toBeCloseTo(interval!.high, 12);
    });
  });

  it('claim false certainty at 3, 0, 0: why they are not for thin samples', () => {
    expect(sisonGlazIntervals([3, 0, 0])[0]?.low).toBe(1);
  });

  it('know nothing when nothing was counted', () => {
    expect(sisonGlazIntervals([0, 0])).toEqual([
      { low: 0, high: 1 },
      { low: 0, high: 1 },
    ]);
  });

  it.each([[[]], [[1.5, 2]], [[-1, 2]]])('refuse %j', (counts) => {
    expect(() => sisonGlazIntervals(counts)).toThrow(StatsInputError);
  });
});
