import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { groupSpread, howFarOut, spreadMean } from '../../src/stats/group-spread.ts';
import { createRandom } from '../../src/stats/random.ts';
import type { Tally } from '../../src/stats/tally.ts';
import { binomialProbability } from './binomial-probability.ts';

const belief = { median: 32, spread: 1.2 };

/** Restricted likelihood of one size by adding up binomials over a fine grid of Beta shares: no gamma function in it. */
function bruteLogChance({ successes, trials }: Tally, mean: number, size: number): number {
  const [a, b] = [mean * size, (1 - mean) * size];
  let [top, bottom] = [0, 0];
  const steps = 20000;
  for (let i = 0; i < steps; i++) {
    const x = (i + 0.5) / steps;
    const density = x ** (a - 1) * (1 - x) ** (b - 1);
    bottom += density;
    top += density * binomialProbability(successes, trials, x);
  }
  return Math.log(top / bottom);
}

describe('groupSpread', () => {
  it('weighs sizes by the beta-binomial chance of the groups, as adding up over shares does', () => {
    const tallies = [
      { successes: 12, trials: 40 },
      { successes: 22, trials: 50 },
      { successes: 9, trials: 45 },
    ];
    const { sizes, means, variances, weights } = groupSpread(tallies, belief);
    const logs = [1, 2, 3].map((i) => {
      const [size, mean] = [sizes[i]!, means[i]!];
      const chance = tallies.reduce((sum, { successes, trials }) => {
        const choose = binomialProbability(successes, trials, 0.5) / 0.5 ** trials;
        return sum + bruteLogChance({ successes, trials }, mean, size) - Math.log(choose);
      }, 0);
      return chance + Math.log(variances[i]!) / 2 - (Math.log(size / belief.median) / belief.spread) ** 2 / 2;
    });
    expect(Math.log(weights[2]! / weights[1]!)).toBeCloseTo(logs[1]! - logs[0]!, 4);
    expect(Math.log(weights[3]! / weights[1]!)).toBeCloseTo(logs[2]! - logs[0]!, 4);
  });

  it('learns that groups differ, and that they do not', () => {
    const meanSize = (tallies: { successes: number; trials: number }[]) => {
      const { sizes, weights } = groupSpread(tallies, belief);
      return Math.exp(weights.reduce((sum, weight, i) => sum + weight * Math.log(sizes[i]!), 0));
    };
    const of = (...shares: number[]) => shares.map((share) => ({ successes: Math.round(200 * share), trials: 200 }));
    const apart = meanSize(of(0.1, 0.3, 0.5, 0.7, 0.9, 0.45));
    const alike = meanSize(of(0.5, 0.49, 0.5, 0.51, 0.5, 0.5));
    expect(apart).toBeLessThan(8);
    expect(alike).toBeGreaterThan(150);
  });

  it('is a probability, about the pooled share, whatever the groups', () => {
    const tally = fc.tuple(fc.nat(60), fc.nat(60)).map(([a, b]) => ({ successes: a, trials: a + b }));
    fc.assert(
      fc.property(fc.array(tally, { maxLength: 8 }), (tallies) => {
        const spread = groupSpread(tallies, belief);
        expect(spread.weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 10);
        const mean = spreadMean(spread);
        expect(mean).toBeGreaterThan(0);
        expect(mean).toBeLessThan(1);
      }),
    );
  });

  it('refuses impossible tallies and beliefs', () => {
    expect(() => groupSpread([{ successes: 3, trials: 2 }], belief)).toThrow(StatsInputError);
    expect(() => groupSpread([], { median: 0, spread: 1 })).toThrow(StatsInputError);
  });
});

describe('howFarOut', () => {
  it('calls a group of the same mean far out about as often as it says, and one of the same kind too', () => {
    const random = createRandom('group spread');
    let [mean, kind] = [0, 0];
    const rounds = 400;
    for (let round = 0; round < rounds; round++) {
      const tallies = Array.from({ length: 12 }, () => drawn(random.uniform, 0.4, 100));
      const far = howFarOut(groupSpread(tallies, belief), drawn(random.uniform, 0.4, 100));
      mean += Number(far.fromMean <= 0.05);
      kind += Number(far.oneMoreGroup <= 0.05);
    }
    // Both tails of a count err on the side of nothing; a spread that allows for groups to differ does so more.
    expect(mean / rounds).toBeLessThan(0.06);
    expect(mean / rounds).toBeGreaterThan(0.005);
    expect(kind).toBeLessThanOrEqual(mean);
  });

  it('tells a group that is nothing like the others, and clusters take away from it', () => {
    const tallies = [40, 44, 47, 50, 53, 56].map((successes) => ({ successes, trials: 100 }));
    const spread = groupSpread(tallies, belief);
    const alone = howFarOut(spread, { successes: 89, trials: 100 });
    const clustered = howFarOut(spread, { successes: 89, trials: 100, within: 0.02 });
    expect(alone.oneMoreGroup).toBeLessThan(0.02);
    expect(alone.fromMean).toBeLessThan(alone.oneMoreGroup);
    expect(clustered.fromMean).toBeGreaterThan(alone.fromMean);
  });
});

function drawn(uniform: () => number, share: number, trials: number) {
  let successes = 0;
  for (let i = 0; i < trials; i++) successes += Number(uniform() < share);
  return { successes, trials };
}
