import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blockedQuarter, type Fate, homeBy } from '../../../src/pressure/protection/block-delay.ts';
import { sprintProfile, sprintSeconds } from '../../../src/pressure/protection/sprint.ts';

/**
 * Share of straight throws under pressure by release time and rushers, professional, 2022-23. Play-by-play: nflverse (CC
 * BY 4.0). Charting: FTN Data via nflverse (CC BY-SA 4.0). Participation: NFL NextGenStats via nflverse (CC BY-SA 4.0).
 * `at` is the middle of the bin. Only the four-man column was used to fit.
 */
const PRESSURED = [
  { at: 1.75, three: 0.032, four: 0.061, five: 0.176 },
  { at: 2.15, three: 0.078, four: 0.118, five: 0.25 },
  { at: 2.4, three: 0.098, four: 0.213, five: 0.351 },
  { at: 2.65, three: 0.193, four: 0.3, five: 0.436 },
  { at: 3.0, three: 0.209, four: 0.372, five: 0.479 },
  { at: 3.6, three: 0.278, four: 0.426, five: 0.585 },
  { at: 4.5, three: 0.484, four: 0.653, five: 0.774 },
];

const lineman = sprintProfile('pro', { group: 'line', speed: 'average' });
const EDGE = 0.2 + sprintSeconds(Math.hypot(4.2, 7), lineman);
const INSIDE = 0.2 + sprintSeconds(8.1, lineman);
const anyHome = (seconds: number, men: readonly (readonly [Fate, number])[]) =>
  1 - men.reduce((none, [fate, arrival]) => none * (1 - homeBy(seconds, fate, arrival)), 1);

const THREE = [
  ['blocked', EDGE],
  ['doubled', EDGE],
  ['doubled', INSIDE],
] as const;
const FOUR = [
  ['blocked', EDGE],
  ['blocked', EDGE],
  ['blocked', INSIDE],
  ['doubled', INSIDE],
] as const;
const FIVE = [
  ['blocked', EDGE],
  ['blocked', EDGE],
  ['blocked', INSIDE],
  ['blocked', INSIDE],
  ['blocked', INSIDE + 0.3],
] as const;

describe('homeBy', () => {
  it.each(PRESSURED)(
    'four blocked men pressure as often as in open play data by $at s (fitted, within 6 points)',
    (row) => {
      expect(Math.abs(anyHome(row.at, FOUR) - row.four)).toBeLessThanOrEqual(0.06);
    },
  );

  it.each(PRESSURED)('three blocked men, not fitted, come within 8 points by $at s', (row) => {
    expect(Math.abs(anyHome(row.at, THREE) - row.three)).toBeLessThanOrEqual(0.08);
  });

  it.each(PRESSURED.slice(1))('five blocked men, not fitted, come within 8 points by $at s', (row) => {
    expect(Math.abs(anyHome(row.at, FIVE) - row.five)).toBeLessThanOrEqual(0.08);
  });

  it('five men early are pressured more often in the data than five blocked men explain: some were free', () => {
    expect(anyHome(1.75, FIVE)).toBeLessThan(0.176);
  });

  it('a free man is home before a half-blocked one, he before a blocked one, he before a doubled one', () => {
    const arrival = fc.double({ min: 1.4, max: 3.5, noNaN: true });
    const after = fc.double({ min: -0.2, max: 6, noNaN: true });
    fc.assert(
      fc.property(arrival, after, (free, delay) => {
        const order = (['free', 'late', 'blocked', 'doubled'] as const).map((fate) => homeBy(free + delay, fate, free));
        expect([...order].sort((a, b) => b - a)).toEqual(order);
      }),
    );
  });

  it('never falls as time passes', () => {
    const fates = fc.constantFrom<Fate>('free', 'late', 'blocked', 'doubled');
    fc.assert(
      fc.property(fates, fc.double({ min: 0.3, max: 8, noNaN: true }), (fate, seconds) => {
        expect(homeBy(seconds + 0.1, fate, 2)).toBeGreaterThanOrEqual(homeBy(seconds, fate, 2));
      }),
    );
  });
});

describe('blockedQuarter', () => {
  it('is the delay by which one in four has beaten the block', () => {
    expect(homeBy(2 + blockedQuarter('blocked'), 'blocked', 2)).toBeCloseTo(0.25, 10);
    expect(homeBy(2 + blockedQuarter('doubled'), 'doubled', 2)).toBeCloseTo(0.25, 10);
  });
});
