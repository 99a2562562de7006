import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import {
  mean,
  quantile,
  quantilesBetween,
  standardError,
  tailNeighbours,
  tailQuantiles,
} from '../../src/stats/quantile.ts';

const values = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 50 });
const probability = fc.double({ min: 0, max: 1, noNaN: true });

describe('quantile', () => {
  it.each([
    { p: 0, expected: 1 },
    { p: 0.1, expected: 1.9 },
    { p: 0.25, expected: 3.25 },
    { p: 0.5, expected: 5.5 },
    { p: 0.9, expected: 9.1 },
    { p: 1, expected: 10 },
  ])('of 1 to 10 at $p is $expected (R quantile(1:10), type 7; from memory)', ({ p, expected }) => {
    expect(quantile(Float64Array.of(7, 1, 10, 4, 2, 9, 3, 8, 6, 5), p)).toBeCloseTo(expected, 12);
  });

  it('agrees with interpolation in the sorted values', () => {
    fc.assert(
      fc.property(values, probability, (list, p) => {
        const sorted = [...list].sort((a, b) => a - b);
        const position = p * (list.length - 1);
        const low = sorted[Math.floor(position)]!;
        const high = sorted[Math.ceil(position)]!;
        expect(quantile(Float64Array.from(list), p)).toBeCloseTo(low + (position % 1) * (high - low), 6);
      }),
    );
  });

  it('selects among thousands of values', () => {
    const many = Float64Array.from({ length: 5001 }, (_, i) => (i * 1789) % 5001);
    expect(quantile(many, 0.25)).toBe(1250);
  });

  it('rises with p and leaves its input alone', () => {
    fc.assert(
      fc.property(values, probability, probability, (list, p, q) => {
        const array = Float64Array.from(list);
        expect(quantile(array, Math.min(p, q))).toBeLessThanOrEqual(quantile(array, Math.max(p, q)) + 1e-9);
        expect([...array]).toEqual([...Float64Array.from(list)]);
      }),
    );
  });

  it('refuses an empty list and what is no probability', () => {
    expect(() => quantile(new Float64Array(0), 0.5)).toThrow('quantile requires at least one value');
    expect(() => quantile(Float64Array.of(1), 1.2)).toThrow(StatsInputError);
  });
});

describe('tailQuantiles', () => {
  it('are the two quantiles, to the bit, and leave the input alone', () => {
    fc.assert(
      fc.property(values, fc.double({ min: 0, max: 0.5, noNaN: true }), (list, p) => {
        const given = Float64Array.from(list);
        expect(tailQuantiles(given, p)).toEqual({ low: quantile(given, p), high: quantile(given, 1 - p) });
        expect([...given]).toEqual(list);
      }),
    );
  });
});

describe('the neighbours of tail quantiles', () => {
  it('give the quantiles of the values after a change that keeps their order, to the bit', () => {
    const tail = fc.double({ min: 0, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(values, tail, fc.double({ min: -1e3, max: 1e3, noNaN: true }), (list, p, shift) => {
        const given = Float64Array.from(list);
        const raised = (value: number) => Math.max(0, value + shift);
        const found = quantilesBetween(tailNeighbours(given, p), raised);
        expect(found).toEqual(tailQuantiles(given.map(raised), p));
        expect([...given]).toEqual(list);
      }),
    );
  });

  it('are the third and fourth, and the seventh and eighth, of ten values at a quarter', () => {
    const { low, high } = tailNeighbours(Float64Array.of(7, 1, 10, 4, 2, 9, 3, 8, 6, 5), 0.25);
    expect(low).toEqual({ below: 3, above: 4, part: 0.25 });
    expect(high).toEqual({ below: 7, above: 8, part: 0.75 });
  });

  it('refuses an empty list and what is no tail', () => {
    expect(() => tailNeighbours(new Float64Array(0), 0.1)).toThrow('quantile requires at least one value');
    expect(() => tailNeighbours(Float64Array.of(1), 0.6)).toThrow(StatsInputError);
  });
});

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
