import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type RepPair, repCounts } from '../../../src/pressure/script/rep-count.ts';

const pair = (call: string, weight: number, need: number | null = null): RepPair => ({
  call,
  look: 'run',
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

  it('always sums to the repetitions of the week', () => {
    const anyPair = fc.record({
      call: fc.constantFrom('a', 'b', 'c'),
      look: fc.constant('run'),
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
