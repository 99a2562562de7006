import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { mean, standardError } from '../../src/stats/mean.ts';

describe('mean and standard error', () => {
  it('of 2 4 4 4 5 5 7 9 are 5 and sqrt(32 / 7 / 8), by hand', () => {
    expect(mean([2, 4, 4, 4, 5, 5, 7, 9])).toBe(5);
    expect(standardError([2, 4, 4, 4, 5, 5, 7, 9])).toBeCloseTo(Math.sqrt(32 / 7 / 8), 14);
  });

  it('lose no digits to a large value that cancels', () => {
    expect(mean([1e16, 1, -1e16])).toBeCloseTo(1 / 3, 14);
  });

  it('one value has no known spread', () => {
    expect(standardError([3])).toBeNull();
  });

  it('refuse an empty list', () => {
    expect(() => mean([])).toThrow(StatsInputError);
    expect(() => standardError([])).toThrow(StatsInputError);
  });
});
