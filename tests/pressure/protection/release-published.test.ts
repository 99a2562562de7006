import { describe, expect, it } from 'vitest';
import { PASS_ANSWERS } from '../../../src/game/answers.ts';
import {
  PUBLISHED_RELEASE,
  publishedRelease,
  releaseShift,
  sackSeconds,
} from '../../../src/pressure/protection/release-published.ts';
import { normalCdf, normalQuantile } from '../../../src/stats/normal.ts';

/** Open data as named in the module: nflverse and FTN Data via nflverse, CC BY-SA 4.0. Seconds at 10, 50 and 90%. */
const QUANTILES = [
  {
    answer: 'screen',
    p10: 1.13,
    p50: 1.74,
    p90: 2.84,
    within: 0.1,
    source: 'nflverse and FTN Data via nflverse 2022-23, 3,710 screens',
  },
  {
    answer: 'quick',
    p10: 1.43,
    p50: 1.8,
    p90: 1.96,
    within: 0.16,
    source: 'nflverse and FTN Data via nflverse 2022, 2,179 throws out within 2.0 s',
  },
  {
    answer: 'dropback',
    p10: 2.14,
    p50: 2.7,
    p90: 4.07,
    within: 0.15,
    source: 'nflverse and FTN Data via nflverse 2022, 9,365 later throws',
  },
  {
    answer: 'deep_shot',
    p10: 2.37,
    p50: 3.0,
    p90: 4.7,
    within: 0.18,
    source: 'nflverse and FTN Data via nflverse 2022, 1,588 throws of 20 yards',
  },
  {
    answer: 'movement',
    p10: 2.6,
    p50: 3.67,
    p90: 5.41,
    within: 0.05,
    source: 'nflverse and FTN Data via nflverse 2022-23, 1,741 plays',
  },
] as const;

describe('publishedRelease', () => {
  it.each(QUANTILES)('$answer lies within $within of the measured quantiles ($source)', (row) => {
    const { mu, sigma } = PUBLISHED_RELEASE[row.answer];
    const at = (p: number) => Math.exp(mu + sigma * normalQuantile(p));
    for (const [p, seconds] of [
      [0.1, row.p10],
      [0.5, row.p50],
      [0.9, row.p90],
    ] as const) {
      expect(Math.abs(at(p) / seconds - 1)).toBeLessThanOrEqual(row.within);
    }
  });

  it('a pro league mean of 2.80 s (league figure for 2023) lies between the quick and the deep curves', () => {
    const mean = (answer: 'dropback' | 'quick') =>
      Math.exp(PUBLISHED_RELEASE[answer].mu + PUBLISHED_RELEASE[answer].sigma ** 2 / 2);
    expect(mean('quick')).toBeLessThan(2.8);
    expect(mean('dropback')).toBeGreaterThan(2.8);
    expect(mean('dropback')).toBeLessThan(3.1);
  });

  it('the second and third reads of a dropback fall inside its middle half (Grabowski 2017: 2.2-2.6 s, by 2.8 s)', () => {
    const { mu, sigma } = PUBLISHED_RELEASE.dropback;
    const shareBy = (seconds: number) => normalCdf((Math.log(seconds) - mu) / sigma);
    expect(shareBy(2.6)).toBeGreaterThan(0.25);
    expect(shareBy(2.8)).toBeLessThan(0.75);
  });

  it('a slow offense holds the ball longer and a fast one shorter, at every level', () => {
    for (const answer of PASS_ANSWERS) {
      const of = (speed: 'slow' | 'average' | 'fast') => publishedRelease(answer, 'high_school', speed).mu;
      expect(of('slow')).toBeGreaterThan(of('average'));
      expect(of('fast')).toBeLessThan(of('average'));
    }
  });

  it('a sack comes at the published median in professional play (Cooper 2011: 2.7-2.8 s)', () => {
    expect(Math.abs(sackSeconds('pro') - 2.75)).toBeLessThanOrEqual(0.1);
  });
});

describe('releaseShift', () => {
  it('has the ball out sooner with every rusher more, the straight throws of 2022-23 by less than a fifth in all', () => {
    for (const answer of ['dropback', 'deep_shot'] as const) {
      const shifts = [3, 4, 5, 6, 7].map((rushers) => releaseShift(answer, rushers));
      expect(shifts).toEqual([...shifts].sort((a, b) => b - a));
      expect(new Set(shifts).size).toBe(shifts.length);
      expect(Math.exp((shifts[4] as number) - (shifts[0] as number))).toBeGreaterThan(0.8);
      expect([2, 8].map((rushers) => releaseShift(answer, rushers))).toEqual([shifts[0], shifts[4]]);
    }
    for (const answer of ['screen', 'quick', 'movement'] as const) expect(releaseShift(answer, 7)).toBe(0);
  });
});
