import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { jamesStein } from '../../src/stats/james-stein.ts';

describe('James-Stein estimates', () => {
  it('of 18 batters: mean .265, factor .212, and .400 becomes .294 (Efron and Morris 1975, 1977; from memory)', () => {
    const hits = [18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7];
    const got = jamesStein(hits.map((successes) => ({ successes, trials: 45 })));
    expect(got.mean.toFixed(3)).toBe('0.265');
    expect(got.kept.toFixed(3)).toBe('0.212');
    expect(got.estimates[0]?.toFixed(3)).toBe('0.294');
  });

  it('never push an estimate past the mean', () => {
    const got = jamesStein([5, 5, 6, 5].map((successes) => ({ successes, trials: 10 })));
    expect(got.kept).toBe(0);
    expect(got.estimates).toEqual([5.25, 5.25, 5.25, 5.25].map((x) => x / 10));
  });

  it('keep the mean', () => {
    const { mean, estimates } = jamesStein([1, 9, 4, 12].map((successes) => ({ successes, trials: 20 })));
    expect(estimates.reduce((a, b) => a + b, 0) / 4).toBeCloseTo(mean, 12);
  });

  it.each([
    [
      [1, 2, 3],
      [9, 9, 9],
    ],
    [
      [1, 2, 3, 4],
      [9, 9, 9, 8],
    ],
    [
      [0, 0, 0, 0],
      [0, 0, 0, 0],
    ],
    [
      [10, 2, 3, 4],
      [9, 9, 9, 9],
    ],
  ])('refuse %j of %j', (x, n) => {
    expect(() => jamesStein(x.map((successes, i) => ({ successes, trials: n[i]! })))).toThrow(StatsInputError);
  });
});
