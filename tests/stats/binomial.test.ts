import { describe, expect, it } from 'vitest';
import { logChoose } from '../../src/stats/binomial.ts';
import { StatsInputError } from '../../src/stats/errors.ts';

describe('logChoose', () => {
  it('counts choices: 52 over 5 is 2598960', () => {
    expect(Math.exp(logChoose(52, 5))).toBeCloseTo(2598960, 4);
  });

  it("sums to 2^n over a row of Pascal's triangle", () => {
    const row = Array.from({ length: 31 }, (_, k) => Math.exp(logChoose(30, k)));
    expect(row.reduce((a, b) => a + b, 0) / 2 ** 30).toBeCloseTo(1, 12);
  });

  it.each([
    [3, 2],
    [0.5, 2],
    [-1, 2],
  ])('refuses %s of %s', (k, n) => {
    expect(() => logChoose(n, k)).toThrow(StatsInputError);
  });
});
