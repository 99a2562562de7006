import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type RepPair, repCounts } from '../../../src/pressure/practice/rep-count.ts';

const pair = (call: string, weight: number, need: number | null = null): RepPair => ({
  call,
  look: 'run',
  install: 0,
  weight,
  need,
});
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('repetitions counted out', () => {
  it('is plain largest remainder where no pair asks for one', () => {
    const weights = [47000, 16000, 15800, 12000, 6100, 3100];
    const source = 'largest remainder with the Hare quota, 10 seats: the worked example of many handbooks, from memory';
    const { counts } = repCounts(
      weights.map((weight, i) => pair(`call ${i}`, weight)),
      10,
    );
    expect(counts, source).toEqual([5, 2, 1, 1, 1, 0]);
  });

  it('gives one to every pair that asks for one, however small its weight', () => {
    const { counts, unmet } = repCounts([pair('a', 100), pair('b', 0.001, 0), pair('c', 0, 1)], 10);
    expect(counts).toEqual([8, 1, 1]);
    expect(unmet).toEqual([]);
  });

  it('serves the pairs of lower need first when repetitions do not reach, and names the rest', () => {
    const pairs = [pair('a', 5, 3), pair('b', 1, 0), pair('c', 1, 1)];
    const { counts, unmet } = repCounts(pairs, 2);
    expect(counts).toEqual([0, 1, 1]);
    expect(unmet).toEqual([pairs[0]]);
  });

  it('no repetitions leave every asking pair unmet', () => {
    expect(repCounts([pair('a', 1, 0)], 0)).toEqual({ counts: [0], unmet: [pair('a', 1, 0)] });
    expect(repCounts([], 12)).toEqual({ counts: [], unmet: [] });
  });

  it('installs new calls before anything is shared out, and shares out the rest by weight', () => {
    const pairs = [{ ...pair('new', 1), install: 10 }, pair('called often', 6), pair('called seldom', 3)];
    expect(repCounts(pairs, 10).counts).toEqual([10, 0, 0]);
    expect(repCounts(pairs, 30).counts).toEqual([12, 12, 6]);
  });

  it('gives a new call what its installing asks for whenever the week can hold it', () => {
    const asked = fc.array(fc.integer({ min: 0, max: 15 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(
        asked,
        fc.array(fc.nat(50), { minLength: 1, maxLength: 6 }),
        fc.nat(100),
        (installs, weights, more) => {
          const pairs = [
            ...installs.map((install, i) => ({ ...pair(`new ${i}`, 1, i), install })),
            ...weights.map((weight, i) => pair(`old ${i}`, weight, i)),
          ];
          const { counts } = repCounts(pairs, sum(installs) + pairs.length + more);
          installs.forEach((install, i) => {
            expect(counts[i]).toBeGreaterThanOrEqual(install);
          });
        },
      ),
      { numRuns: 100 },
    );
  });

  it('more weight never means fewer repetitions', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 2, maxLength: 8 }),
        fc.integer({ min: 1, max: 40 }),
        fc.nat(150),
        (weights, more, seats) => {
          const of = (first: number) =>
            repCounts(
              [first, ...weights.slice(1)].map((weight, i) => pair(`call ${i}`, weight, i)),
              seats,
            ).counts[0] ?? 0;
          expect(of((weights[0] ?? 0) + more)).toBeGreaterThanOrEqual(of(weights[0] ?? 0));
        },
      ),
      { numRuns: 200 },
    );
  });

  it('always sums to the repetitions of the week', () => {
    const anyPair = fc.record({
      call: fc.constantFrom('a', 'b', 'c'),
      look: fc.constant('run'),
      install: fc.double({ min: 0, max: 12, noNaN: true }),
      weight: fc.double({ min: 0, max: 50, noNaN: true }),
      need: fc.option(fc.integer({ min: 0, max: 9 })),
    });
    fc.assert(
      fc.property(fc.array(anyPair, { minLength: 1, maxLength: 30 }), fc.nat(200), (pairs, seats) => {
        fc.pre(pairs.some(({ weight }) => weight > 0));
        const { counts, unmet } = repCounts(pairs, seats);
        expect(sum(counts)).toBe(seats);
        expect(counts.every((count) => Number.isInteger(count) && count >= 0)).toBe(true);
        const asking = pairs.filter(({ need }) => need !== null).length;
        expect(unmet.length).toBe(Math.max(0, asking - seats));
      }),
      { numRuns: 200 },
    );
  });
});
