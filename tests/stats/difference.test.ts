import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newcombeDifference, type TwoTallies } from '../../src/stats/difference.ts';
import { StatsInputError } from '../../src/stats/errors.ts';

const tally = fc.integer({ min: 1, max: 60 }).chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));

describe('Newcombe 1998, Statistics in Medicine 17:873, Table II, method 10 as printed', () => {
  it.each([
    [{ x1: 56, n1: 70, x2: 48, n2: 80 }, '0.0524', '0.3339'],
    [{ x1: 9, n1: 10, x2: 3, n2: 10 }, '0.1705', '0.8090'],
    [{ x1: 6, n1: 7, x2: 2, n2: 7 }, '0.0582', '0.8062'],
    [{ x1: 5, n1: 56, x2: 0, n2: 29 }, '-0.0381', '0.1926'],
    [{ x1: 0, n1: 10, x2: 0, n2: 20 }, '-0.1611', '0.2775'],
    [{ x1: 10, n1: 10, x2: 0, n2: 10 }, '0.6075', '1.0000'],
  ])('%j', (tallies, low, high) => {
    const got = newcombeDifference(tallies);
    expect([got.low.toFixed(4), got.high.toFixed(4)]).toEqual([low, high]);
  });
});

describe('an interval of a difference', () => {
  it('holds the difference and stays within [-1, 1]', () => {
    fc.assert(
      fc.property(tally, tally, ([x1, n1], [x2, n2]) => {
        const { estimate, low, high } = newcombeDifference({ x1, n1, x2, n2 });
        expect(low).toBeGreaterThanOrEqual(-1);
        expect(high).toBeLessThanOrEqual(1);
        expect(low).toBeLessThanOrEqual(estimate! + 1e-9);
        expect(high).toBeGreaterThanOrEqual(estimate! - 1e-9);
      }),
    );
  });

  it('turns round when the two tallies swap, and when successes become failures', () => {
    fc.assert(
      fc.property(tally, tally, ([x1, n1], [x2, n2]) => {
        const there = newcombeDifference({ x1, n1, x2, n2 });
        const swapped = newcombeDifference({ x1: x2, n1: n2, x2: x1, n2: n1 });
        const failures = newcombeDifference({ x1: n1 - x1, n1, x2: n2 - x2, n2 });
        for (const back of [swapped, failures]) {
          expect(back.low).toBeCloseTo(-there.high, 8);
          expect(back.high).toBeCloseTo(-there.low, 8);
        }
      }),
    );
  });

  it('widens with the level', () => {
    const tallies: TwoTallies = { x1: 6, n1: 17, x2: 4, n2: 21 };
    expect(newcombeDifference({ ...tallies, level: 0.99 }).high).toBeGreaterThan(
      newcombeDifference({ ...tallies, level: 0.8 }).high,
    );
    expect(newcombeDifference({ ...tallies, level: 0.99 }).low).toBeLessThan(
      newcombeDifference({ ...tallies, level: 0.8 }).low,
    );
  });

  it('knows nothing when one tally is empty', () => {
    expect(newcombeDifference({ x1: 0, n1: 0, x2: 3, n2: 5 })).toEqual({ estimate: null, low: -1, high: 1 });
  });

  it('refuses an impossible tally', () => {
    expect(() => newcombeDifference({ x1: 3, n1: 2, x2: 0, n2: 5 })).toThrow(StatsInputError);
  });
});
