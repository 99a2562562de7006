import fc from 'fast-check';
import { standardDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { clusteredMean } from '../../src/stats/clustered-mean.ts';
import { StatsInputError } from '../../src/stats/errors.ts';

const values = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 2, maxLength: 20 });

/** Standard error of a mean by the population deviation of a general-purpose library. */
const plainError = (list: readonly number[]) => standardDeviation([...list]) / Math.sqrt(list.length - 1);

describe('clusteredMean', () => {
  it('with one value a cluster is the plain standard error (reference: simple-statistics)', () => {
    fc.assert(
      fc.property(values, (list) => {
        const { mean, standardError } = clusteredMean(
          list,
          list.map((_, i) => i),
        );
        expect(mean).toBeCloseTo(list.reduce((a, b) => a + b, 0) / list.length, 10);
        expect(standardError).toBeCloseTo(plainError(list), 10);
      }),
    );
  });

  it('with clusters of one size is the standard error of their means', () => {
    fc.assert(
      fc.property(values, (list) => {
        const spread = list.flatMap((value, i) => [value - (i % 7), value + (i % 7)]);
        const { standardError, clusters } = clusteredMean(
          spread,
          spread.map((_, i) => Math.floor(i / 2)),
        );
        expect(standardError).toBeCloseTo(plainError(list), 10);
        expect(clusters).toBe(list.length);
      }),
    );
  });

  it('does not get surer by repeating the values of a cluster', () => {
    const once = clusteredMean([1, 2, 4], ['a', 'b', 'c']).standardError;
    expect(clusteredMean([1, 1, 2, 2, 4, 4], ['a', 'a', 'b', 'b', 'c', 'c']).standardError).toBeCloseTo(once!, 12);
  });

  it('says null where there is nothing to say', () => {
    expect(clusteredMean([], [])).toEqual({ mean: null, standardError: null, clusters: 0 });
    expect(clusteredMean([1, 3], ['a', 'a'])).toEqual({ mean: 2, standardError: null, clusters: 1 });
  });

  it('refuses values without a cluster and values that are no numbers', () => {
    expect(() => clusteredMean([1], [])).toThrow(StatsInputError);
    expect(() => clusteredMean([Number.NaN], [1])).toThrow(/finite/);
  });
});
