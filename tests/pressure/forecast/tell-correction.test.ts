import { describe, expect, it } from 'vitest';
import { type CountedTest, correctTells } from '../../../src/pressure/forecast/tell-correction.ts';
import { benjaminiHochberg } from '../../../src/stats/adjust.ts';
import { createRandom } from '../../../src/stats/random.ts';

/** The smallest K with at most K tests that could come below rate / K, by trying every K. */
function bruteCounted(tests: readonly CountedTest[], rate: number): CountedTest[] {
  for (let k = 1; k <= tests.length; k++) {
    const able = tests.filter(({ leastLog }) => leastLog <= Math.log(rate / k));
    if (able.length <= k) return able;
  }
  return [...tests];
}

describe('correctTells', () => {
  const random = createRandom('tell correction');
  const tests = Array.from({ length: 300 }, (_, i): CountedTest => {
    const leastLog = -12 * random.uniform();
    return { features: 1 + (i % 3), leastLog, p: Math.max(Math.exp(leastLog), random.uniform() ** 3) };
  });

  it('counts only tests that could pass, as trying every number does, and weighs them as said', () => {
    const counted = bruteCounted(tests, 0.1);
    const simple = counted.filter(({ features }) => features <= 2).length;
    const [up, down] = [(0.8 * counted.length) / simple, (0.2 * counted.length) / (counted.length - simple)];
    const by = benjaminiHochberg(
      counted.map(({ features, p }) => Math.min(1, p / (features <= 2 ? up : down))),
      counted.length,
    );
    const got = correctTells(counted, tests, 0.1);
    expect(counted.length).toBeLessThan(tests.length);
    got.forEach((value, i) => {
      expect(value).toBeCloseTo(by[i]!, 12);
    });
  });

  it('calls nothing where only cells of few snaps were looked at', () => {
    const few = Array.from({ length: 50 }, (): CountedTest => ({ features: 1, leastLog: -3, p: Math.exp(-3) }));
    expect(correctTells(few, few, 0.1).every((value) => value > 0.1)).toBe(true);
    expect(correctTells([], [], 0.1)).toEqual([]);
  });
});
