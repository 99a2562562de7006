import { describe, expect, it } from 'vitest';
import { ANSWERS } from '../../../src/game/answers.ts';
import { FAMILIES, type Family } from '../../../src/game/families.ts';
import { DISTANCES, INSIDE_SHARE, ZONE_CONTRASTS, ZONE_KEPT } from '../../../src/pressure/evidence/league-figures.ts';
import { betweenOffenses, leagueErrors, leaguePoints } from '../../../src/pressure/evidence/league-points.ts';

const pressures = FAMILIES.filter((family) => family !== 'base');
const open = { zone: 'open_field', distance: 'first' } as const;
const red = { zone: 'red_zone', distance: 'first' } as const;

/** Points saved per ten dropbacks over the league's zones, straight throws, downs alike. */
function perTenDropbacks(family: Family): number {
  const over = (place: (distance: (typeof DISTANCES)[number]) => number) =>
    DISTANCES.reduce((sum, distance) => sum + place(distance), 0) / DISTANCES.length;
  const outside = over((distance) => leaguePoints(family, 'dropback', { zone: 'open_field', distance }));
  const inside = over((distance) => leaguePoints(family, 'dropback', { zone: 'red_zone', distance }));
  return 10 * ((1 - INSIDE_SHARE) * outside + INSIDE_SHARE * inside);
}

describe('the league part of points', () => {
  it('has pressure as such at about +0.47 +- 0.10 per ten dropbacks (professional games, 2019-23)', () => {
    const mean = pressures.reduce((sum, family) => sum + perTenDropbacks(family), 0) / pressures.length;
    expect(mean).toBeGreaterThan(0.3);
    expect(mean).toBeLessThan(0.6);
    expect(10 * leagueErrors('hot').pressure).toBeCloseTo(0.12, 1);
  });

  it('spreads the families by no more than their true spread of about 0.2', () => {
    const values = pressures.map(perTenDropbacks);
    expect(Math.max(...values) - Math.min(...values)).toBeLessThan(0.6);
    for (const family of pressures) expect(10 * leagueErrors(family).family).toBeLessThan(0.3);
  });

  it('gains outside the 20 and loses inside, by the kept part of what was measured', () => {
    for (const family of ['man_free', 'zero', 'three_under'] as const) {
      expect(leaguePoints(family, 'dropback', open)).toBeGreaterThan(0);
      expect(leaguePoints(family, 'dropback', red)).toBeLessThan(0);
      const gap = 10 * (leaguePoints(family, 'dropback', red) - leaguePoints(family, 'dropback', open));
      const measured = ZONE_CONTRASTS.map(({ value }) => value);
      expect(gap).toBeGreaterThan(ZONE_KEPT * Math.min(...measured));
      expect(gap).toBeLessThan(ZONE_KEPT * Math.max(...measured));
    }
  });

  it('keeps of the zone what sixty looks leave: 1 less the square of the expected largest over the seen one', () => {
    // Mean of the largest of sixty absolute standard normal values, by summing the distribution function.
    const erf = (x: number) => 1 - 2 * tail(x);
    let expected = 0;
    for (let x = 0; x < 8; x += 0.001) expected += 0.001 * (1 - erf(x) ** 60);
    expect(ZONE_KEPT).toBeCloseTo(1 - (expected / 3.5) ** 2, 2);
  });

  it('is nothing on runs and nothing for the base', () => {
    for (const family of FAMILIES) {
      expect(leaguePoints(family, 'run', open)).toBe(0);
      expect(leaguePoints(family, 'quarterback_run', red)).toBe(0);
    }
    for (const answer of ANSWERS) expect(leaguePoints('base', answer, open)).toBe(0);
    expect(leagueErrors('base')).toEqual({ pressure: 0, family: 0 });
  });

  it('has man with one deep best against screens, as five seasons of screens do', () => {
    expect(leaguePoints('man_free', 'screen', open)).toBeGreaterThan(leaguePoints('three_under', 'screen', open));
    expect(leaguePoints('man_free', 'screen', open)).toBeGreaterThan(leaguePoints('zero', 'screen', open));
  });

  it('leaves more open at a level nobody measured', () => {
    expect(betweenOffenses('high_school')).toBeGreaterThan(betweenOffenses('pro'));
  });
});

/** Upper tail of the standard normal distribution, by Simpson's rule. */
function tail(x: number): number {
  const steps = 400;
  const density = (t: number) => Math.exp((-t * t) / 2) / Math.sqrt(2 * Math.PI);
  const width = (9 - x) / steps;
  let sum = density(x) + density(9);
  for (let i = 1; i < steps; i++) sum += (i % 2 === 1 ? 4 : 2) * density(x + i * width);
  return (sum * width) / 3;
}
