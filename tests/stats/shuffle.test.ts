import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomState } from '../../src/stats/random-state.ts';
import { shuffleAt } from '../../src/stats/shuffle.ts';

describe('shuffling at some places', () => {
  it('moves values among these places only and loses none', () => {
    fc.assert(
      fc.property(fc.integer(), fc.array(fc.tuple(fc.integer({ min: -9, max: 9 }), fc.boolean())), (seed, cells) => {
        const given = Int32Array.from(cells, ([value]) => value);
        const places = Int32Array.from(cells.flatMap(([, chosen], i) => (chosen ? [i] : [])));
        const values = given.slice();
        shuffleAt(randomState(seed), values, places);
        const at = (list: Int32Array) => [...places.map((place) => list[place]!)].sort((a, b) => a - b);
        expect(at(values)).toEqual(at(given));
        cells.forEach(([value, chosen], i) => {
          if (!chosen) expect(values[i]).toBe(value);
        });
      }),
    );
  });

  it('brings every order about equally often', () => {
    const state = randomState(3);
    const orders = new Map<string, number>();
    for (let i = 0; i < 6000; i++) {
      const values = Int32Array.of(1, 2, 0, 3);
      shuffleAt(state, values, Int32Array.of(3, 0, 1));
      const order = values.join('');
      orders.set(order, (orders.get(order) ?? 0) + 1);
    }
    expect(orders.size).toBe(6);
    const chiSquare = [...orders.values()].reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
    expect(chiSquare).toBeLessThan(20.5); // 0.999 quantile for 5 degrees of freedom, from memory
  });
});
