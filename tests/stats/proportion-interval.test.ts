import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import type { Interval } from '../../src/stats/interval.ts';
import { clopperPearsonInterval, jeffreysInterval, wilsonInterval } from '../../src/stats/proportion-interval.ts';

type Method = (successes: number, trials: number, level?: number) => Interval;
const METHODS: [string, Method][] = [
  ['Wilson', wilsonInterval],
  ['Jeffreys', jeffreysInterval],
  ['Clopper-Pearson', clopperPearsonInterval],
];

const counts = fc.integer({ min: 1, max: 400 }).chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));

describe('Newcombe 1998, Statistics in Medicine 17:857, Table I, as printed', () => {
  it.each([
    { x: 81, n: 263, wilson: [0.2553, 0.3662], exact: [0.2527, 0.3676] },
    { x: 15, n: 148, wilson: [0.0624, 0.1605], exact: [0.0578, 0.1617] },
    { x: 0, n: 20, wilson: [0, 0.1611], exact: [0, 0.1684] },
    { x: 1, n: 29, wilson: [0.0061, 0.1718], exact: [0.0009, 0.1776] },
  ])('$x of $n', ({ x, n, wilson, exact }) => {
    const printed = ({ low, high }: Interval) => [Number(low.toFixed(4)), Number(high.toFixed(4))];
    expect(printed(wilsonInterval(x, n))).toEqual(wilson);
    expect(printed(clopperPearsonInterval(x, n))).toEqual(exact);
  });
});

describe.each(METHODS)('%s interval', (_name, method) => {
  it('stays within [0, 1] and holds the share', () => {
    fc.assert(
      fc.property(counts, ([x, n]) => {
        const { low, high } = method(x, n);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeLessThanOrEqual(1);
        expect(low).toBeLessThanOrEqual(x / n);
        expect(high).toBeGreaterThanOrEqual(x / n);
      }),
    );
  });

  it('mirrors when successes and failures swap', () => {
    fc.assert(
      fc.property(counts, ([x, n]) => {
        const there = method(x, n);
        const back = method(n - x, n);
        expect(there.low).toBeCloseTo(1 - back.high, 9);
        expect(there.high).toBeCloseTo(1 - back.low, 9);
      }),
    );
  });

  it('narrows when the same share comes from twice the trials', () => {
    fc.assert(
      fc.property(counts, ([x, n]) => {
        const once = method(x, n);
        const twice = method(2 * x, 2 * n);
        expect(twice.high - twice.low).toBeLessThan(once.high - once.low);
      }),
    );
  });

  it('widens with the level', () => {
    fc.assert(
      fc.property(counts, ([x, n]) => {
        const narrow = method(x, n, 0.8);
        const wide = method(x, n, 0.95);
        expect(wide.low).toBeLessThanOrEqual(narrow.low);
        expect(wide.high).toBeGreaterThanOrEqual(narrow.high);
      }),
    );
  });

  it('knows nothing after no trial', () => {
    expect(method(0, 0)).toEqual({ low: 0, high: 1 });
  });

  it.each([
    [5, 4],
    [-1, 4],
    [0, -1],
    [Number.NaN, 4],
    [1, Number.POSITIVE_INFINITY],
  ])('refuses %s of %s', (x, n) => {
    expect(() => method(x, n)).toThrow(StatsInputError);
  });

  it('refuses a level of 95', () => {
    expect(() => method(1, 2, 95)).toThrow('a confidence level must lie between 0 and 1, got 95');
  });
});

describe('the ends', () => {
  it.each(METHODS)('%s touches 0 exactly at no success and 1 exactly at no failure', (_name, method) => {
    expect(method(0, 6).low).toBe(0);
    expect(method(6, 6).high).toBe(1);
  });

  it('Wilson at no success of 5 still reaches z²/(n+z²) = 0.434', () => {
    expect(wilsonInterval(0, 5).high).toBeCloseTo(1.959963984540054 ** 2 / (5 + 1.959963984540054 ** 2), 12);
    expect(wilsonInterval(0, 5).high.toFixed(3)).toBe('0.434');
  });

  it('Clopper-Pearson at no success is 1 - (tail)^(1/n)', () => {
    expect(clopperPearsonInterval(0, 10).high).toBeCloseTo(1 - 0.025 ** 0.1, 10);
  });
});
