import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { mantelHaenszel } from '../../src/stats/mantel-haenszel.ts';

/** Admissions by department, men then women: Bickel, Hammel and O'Connell 1975, Science 187:398; counts as in R. */
const BERKELEY = [
  [512, 825, 89, 108],
  [353, 560, 17, 25],
  [120, 325, 202, 593],
  [138, 417, 131, 375],
  [53, 191, 94, 393],
  [22, 373, 24, 341],
].map(([successes = 0, trials = 0, otherSuccesses = 0, otherTrials = 0]) => ({
  successes,
  trials,
  otherSuccesses,
  otherTrials,
}));

describe('the Mantel-Haenszel test', () => {
  it('gives the published statistic of the Berkeley admissions', () => {
    // R 4, mantelhaen.test(UCBAdmissions, correct = FALSE): X-squared 1.5246, p 0.2169 (two-sided); from memory.
    const { z, pFewer, pMore } = mantelHaenszel(BERKELEY);
    expect((z as number) ** 2).toBeCloseTo(1.5246, 3);
    expect(2 * Math.min(pFewer, pMore)).toBeCloseTo(0.2169, 3);
  });

  it('is the mean and the variance of the hypergeometric count in one stratum', () => {
    // 3 of 5 against 2 of 7: mean 5*5/12, variance 5*7*5*7/(144*11).
    const { expected, z } = mantelHaenszel([{ successes: 3, trials: 5, otherSuccesses: 2, otherTrials: 7 }]);
    expect(expected).toBeCloseTo(25 / 12, 12);
    expect(z).toBeCloseTo((3 - 25 / 12) / Math.sqrt((5 * 7 * 5 * 7) / (144 * 11)), 12);
  });

  it('tells nothing where there is nobody to compare with', () => {
    expect(mantelHaenszel([{ successes: 3, trials: 5, otherSuccesses: 0, otherTrials: 0 }])).toMatchObject({
      z: null,
      pFewer: 1,
      pMore: 1,
    });
    expect(mantelHaenszel([]).expected).toBe(0);
  });

  it('refuses more successes than trials', () => {
    expect(() => mantelHaenszel([{ successes: 3, trials: 2, otherSuccesses: 0, otherTrials: 0 }])).toThrow(
      StatsInputError,
    );
  });
});
