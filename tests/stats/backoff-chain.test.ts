import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chainFixed, chainFixedBinomial } from '../../src/stats/backoff-chain.ts';
import { StatsInputError } from '../../src/stats/errors.ts';

const level = fc.record({
  counts: fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 3, maxLength: 3 }),
  strength: fc.double({ min: 0, max: 60, noNaN: true }),
});
const ROOT = [0.5, 0.3, 0.2];

describe('back-off chain', () => {
  it('mixes each level with its parent: by hand, 9/14 with 12 of 0.5125 is 15.15/26', () => {
    const got = chainFixedBinomial({ successes: [30, 9], trials: [60, 14], strengths: [20, 12], root: 0.55 });
    expect(got[0]).toBeCloseTo((30 + 20 * 0.55) / 80, 14);
    expect(got[1]).toBeCloseTo(15.15 / 26, 14);
  });

  it('shares sum to 1 and lie between the raw shares and the parent', () => {
    fc.assert(
      fc.property(fc.array(level, { maxLength: 4 }), (levels) => {
        const got = chainFixed({
          counts: levels.map((l) => l.counts),
          strengths: levels.map((l) => l.strength),
          root: ROOT,
        });
        levels.forEach(({ counts }, k) => {
          const parent = got[k - 1] ?? ROOT;
          const total = counts.reduce((a, b) => a + b, 0);
          expect(got[k]!.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
          got[k]!.forEach((share, j) => {
            const raw = total === 0 ? parent[j]! : counts[j]! / total;
            expect(share).toBeGreaterThanOrEqual(Math.min(raw, parent[j]!) - 1e-12);
            expect(share).toBeLessThanOrEqual(Math.max(raw, parent[j]!) + 1e-12);
          });
        });
      }),
    );
  });

  it('a level without counts keeps its parent, a strength of 0 forgets it', () => {
    expect(chainFixed({ counts: [[0, 0, 0]], strengths: [5], root: ROOT })[0]).toEqual(ROOT);
    expect(chainFixed({ counts: [[0, 0, 0]], strengths: [0], root: ROOT })[0]).toEqual(ROOT);
    expect(chainFixed({ counts: [[1, 1, 2]], strengths: [0], root: ROOT })[0]).toEqual([0.25, 0.25, 0.5]);
  });

  it('of one share is the chain of two categories', () => {
    const share = chainFixedBinomial({ successes: [3, 1], trials: [7, 2], strengths: [4, 6], root: 0.4 });
    const pairs = chainFixed({
      counts: [
        [3, 4],
        [1, 1],
      ],
      strengths: [4, 6],
      root: [0.4, 0.6],
    });
    expect(share).toEqual(pairs.map(([first]) => first));
  });

  it('refuses what does not fit', () => {
    expect(() => chainFixed({ counts: [[1, 2]], strengths: [1, 2], root: [0.5, 0.5] })).toThrow(StatsInputError);
    expect(() => chainFixed({ counts: [[1, 2]], strengths: [1], root: ROOT })).toThrow(StatsInputError);
    expect(() => chainFixed({ counts: [[-1, 2]], strengths: [1], root: [0.5, 0.5] })).toThrow(StatsInputError);
    expect(() => chainFixed({ counts: [[1, 2]], strengths: [-1], root: [0.5, 0.5] })).toThrow(StatsInputError);
    expect(() => chainFixedBinomial({ successes: [3], trials: [2], strengths: [1], root: 0.5 })).toThrow(
      StatsInputError,
    );
    expect(() => chainFixedBinomial({ successes: [3], trials: [], strengths: [1], root: 0.5 })).toThrow(
      StatsInputError,
    );
  });
});
