import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { repOrder } from '../../../src/pressure/practice/rep-order.ts';

describe('order of the repetitions', () => {
  it('begins with the new calls and lets the calls take turns', () => {
    const pairs = [
      { call: 'old', count: 2, isNew: false },
      { call: 'old', count: 1, isNew: false },
      { call: 'new', count: 1, isNew: true },
      { call: 'other', count: 1, isNew: false },
      { call: 'new', count: 2, isNew: true },
    ];
    expect(repOrder(pairs)).toEqual([2, 4, 0, 3, 1, 4, 0]);
  });

  it('holds every repetition once, and every pair is seen before any is seen again', () => {
    const anyPair = fc.record({
      call: fc.constantFrom('a', 'b', 'c'),
      count: fc.nat(6),
      isNew: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(anyPair, { maxLength: 20 }), (pairs) => {
        const order = repOrder(pairs);
        for (const [i, { count }] of pairs.entries()) expect(order.filter((index) => index === i).length).toBe(count);
        const present = pairs.filter(({ count }) => count > 0).length;
        expect(new Set(order.slice(0, present)).size).toBe(present);
      }),
      { numRuns: 100 },
    );
  });
});
