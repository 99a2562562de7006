import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { wilsonInterval } from '../../src/stats/proportion-interval.ts';
import { weightedShare } from '../../src/stats/weighted-share.ts';

const rows = fc.array(fc.tuple(fc.double({ min: 0.01, max: 5, noNaN: true }), fc.boolean()), {
  minLength: 1,
  maxLength: 40,
});
const split = (pairs: [number, boolean][]) => [pairs.map(([w]) => w), pairs.map(([, y]) => y)] as const;

describe('weighted share', () => {
  it('with equal weights is the plain share with its Wilson interval', () => {
    const outcomes = [true, true, true, ...new Array<boolean>(7).fill(false)];
    const got = weightedShare(new Array(10).fill(2), outcomes);
    expect(got).toEqual({ estimate: 0.3, effectiveTrials: 10, ...wilsonInterval(3, 10) });
  });

  it('counts (sum)² / sum of squares observations: 64 / 12 (Kish 1965, from memory)', () => {
    const got = weightedShare([2, 2, 1, 1, 1, 1], [true, false, true, false, false, true]);
    expect(got.effectiveTrials).toBeCloseTo(64 / 12, 12);
  });

  it('never counts more observations than there are', () => {
    fc.assert(
      fc.property(rows, (pairs) => {
        const got = weightedShare(...split(pairs));
        expect(got.effectiveTrials).toBeLessThanOrEqual(pairs.length + 1e-9);
        expect(got.low).toBeLessThanOrEqual(got.estimate! + 1e-12);
        expect(got.high).toBeGreaterThanOrEqual(got.estimate! - 1e-12);
      }),
    );
  });

  it('does not change when every weight is multiplied, or the rows are reordered', () => {
    fc.assert(
      fc.property(rows, (pairs) => {
        const got = weightedShare(...split(pairs));
        const scaled = weightedShare(...split(pairs.map(([w, y]) => [w * 7, y])));
        const turned = weightedShare(...split(pairs.toReversed()));
        for (const other of [scaled, turned]) {
          expect(other.effectiveTrials).toBeCloseTo(got.effectiveTrials, 8);
          expect(other.estimate).toBeCloseTo(got.estimate!, 10);
          expect(other.low).toBeCloseTo(got.low, 8);
        }
      }),
    );
  });

  it.each([
    [[], []],
    [
      [0, 0],
      [true, false],
    ],
  ])('knows nothing without weight: %j', (weights, successes) => {
    expect(weightedShare(weights, successes)).toEqual({ estimate: null, effectiveTrials: 0, low: 0, high: 1 });
  });

  it('refuses negative weights and unequal lengths', () => {
    expect(() => weightedShare([-1], [true])).toThrow(StatsInputError);
    expect(() => weightedShare([1, 1], [true])).toThrow(
      'weightedShare requires one weight per observation, got 2 for 1',
    );
  });
});
