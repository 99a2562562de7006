import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { reliabilityBins } from '../../src/stats/reliability.ts';

describe('reliabilityBins', () => {
  it("sorts Brier's ten forecasts of rain (Brier 1950, Monthly Weather Review 78:1, table 1; from memory)", () => {
    const bins = reliabilityBins([0.7, 0.9, 0.8, 0.4, 0.2, 0, 0, 0, 0, 0.1], [0, 1, 1, 1, 0, 0, 0, 0, 0, 0], 5);
    expect(bins.map(({ forecasts, happened }) => [happened, forecasts])).toEqual([
      [0, 5],
      [0, 1],
      [1, 1],
      [0, 1],
      [2, 2],
    ]);
    expect(bins[0]!.said).toBeCloseTo(0.02, 12);
    expect(bins[4]!.said).toBeCloseTo(0.85, 12);
  });

  it('keeps every forecast once, within its bin', () => {
    const pair = fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom(0, 1));
    fc.assert(
      fc.property(fc.array(pair, { maxLength: 40 }), fc.integer({ min: 1, max: 12 }), (pairs, count) => {
        const bins = reliabilityBins(
          pairs.map(([p]) => p),
          pairs.map(([, y]) => y),
          count,
        );
        expect(bins.reduce((sum, { forecasts }) => sum + forecasts, 0)).toBe(pairs.length);
        expect(bins.reduce((sum, { happened }) => sum + happened, 0)).toBe(pairs.filter(([, y]) => y === 1).length);
        for (const { low, high, said } of bins) {
          expect(said === null || (said >= low - 1e-9 && said <= high + 1e-9)).toBe(true);
        }
      }),
    );
  });

  it('has no mean forecast in an empty bin', () => {
    expect(reliabilityBins([], [], 2).map(({ said }) => said)).toEqual([null, null]);
  });

  it('refuses what is no forecast', () => {
    expect(() => reliabilityBins([1.2], [1])).toThrow(StatsInputError);
    expect(() => reliabilityBins([0.2], [])).toThrow(StatsInputError);
    expect(() => reliabilityBins([], [], 0)).toThrow(StatsInputError);
  });
});
