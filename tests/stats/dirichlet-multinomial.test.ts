import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logDirichletMultinomial } from '../../src/stats/dirichlet-multinomial.ts';

/** Polya's urn: each ball drawn goes back with one more of its color. */
function urn(draws: readonly number[], shares: readonly number[], worth: number): number {
  const balls = shares.map((share) => share * worth);
  let [chance, total] = [1, worth];
  for (const color of draws) {
    chance *= (balls[color] as number) / total;
    balls[color] = (balls[color] as number) + 1;
    total += 1;
  }
  return chance;
}

describe('logDirichletMultinomial', () => {
  it('is 2! 3! 1! 0! / 6! with three evenly likely shares: every split of n is as likely (Laplace)', () => {
    const log = logDirichletMultinomial({ counts: [3, 1, 0], shares: [1 / 3, 1 / 3, 1 / 3], worth: 3 });
    expect(Math.exp(log)).toBeCloseTo((2 * 6) / 720, 12);
  });

  it("is the chance of the draws from Polya's urn, in any order", () => {
    const task = fc.tuple(
      fc.array(fc.nat({ max: 2 }), { maxLength: 30 }),
      fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 })),
      fc.integer({ min: 1, max: 2000 }),
    );
    fc.assert(
      fc.property(task, ([draws, parts, worth]) => {
        const sum = parts[0] + parts[1] + parts[2];
        const shares = parts.map((part) => part / sum);
        const counts = [0, 1, 2].map((color) => draws.filter((draw) => draw === color).length);
        const log = logDirichletMultinomial({ counts, shares, worth });
        expect(log).toBeCloseTo(Math.log(urn(draws, shares, worth)), 7);
      }),
    );
  });

  it('says nothing of a group without counts, and refuses what is no worth or no match', () => {
    expect(logDirichletMultinomial({ counts: [0, 0], shares: [0.5, 0.5], worth: 4 })).toBe(0);
    expect(() => logDirichletMultinomial({ counts: [1, 0], shares: [0.5, 0.5], worth: 0 })).toThrow('above 0');
    expect(() => logDirichletMultinomial({ counts: [1], shares: [0.5, 0.5], worth: 4 })).toThrow('same categories');
  });
});
