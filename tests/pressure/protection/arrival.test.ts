import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LANES, type Lane, type Level } from '../../../src/game/call-library.ts';
import { arrivalSeconds, rushYards, START_DELAY } from '../../../src/pressure/protection/arrival.ts';
import { sprintProfile } from '../../../src/pressure/protection/sprint.ts';

/** Computed from the published sprint figures: stack straight over the gap, passer 7 yards deep, no reaction time. */
const SAFETY_TABLE = [
  { depth: 7, gap: 'A', pro: 1.97, college: 2.26, high_school: 2.34, slow: 2.47 },
  { depth: 7, gap: 'B', pro: 2.0, college: 2.29, high_school: 2.38, slow: 2.5 },
  { depth: 7, gap: 'C', pro: 2.06, college: 2.36, high_school: 2.45, slow: 2.58 },
  { depth: 8, gap: 'A', pro: 2.07, college: 2.37, high_school: 2.46, slow: 2.59 },
  { depth: 8, gap: 'B', pro: 2.1, college: 2.41, high_school: 2.5, slow: 2.63 },
  { depth: 8, gap: 'C', pro: 2.16, college: 2.47, high_school: 2.57, slow: 2.7 },
  { depth: 10, gap: 'B', pro: 2.31, college: 2.63, high_school: 2.73, slow: 2.87 },
] as const;
const OVER_GAP = { A: 0.7, B: 2.4, C: 3.66 } as const;

const run = (level: Level, rush: { lateral: number; depth: number; lane: Lane; speed?: 'slow'; startSpeed?: number }) =>
  arrivalSeconds(
    {
      spot: rush,
      lane: rush.lane,
      way: 'straight',
      profile: sprintProfile(level, { group: 'secondary', speed: rush.speed ?? 'average' }),
      startSpeed: rush.startSpeed ?? 0,
    },
    7,
  ) - START_DELAY.straight;

describe('arrivalSeconds', () => {
  it.each(SAFETY_TABLE)('a safety from $depth yards through $gap takes the tabled time at every level', (row) => {
    const rush = { lateral: OVER_GAP[row.gap], depth: row.depth, lane: `near_${row.gap}` as Lane };
    expect(Math.abs(run('pro', rush) - row.pro)).toBeLessThanOrEqual(0.02);
    expect(Math.abs(run('college', rush) - row.college)).toBeLessThanOrEqual(0.02);
    expect(Math.abs(run('high_school', rush) - row.high_school)).toBeLessThanOrEqual(0.02);
    expect(Math.abs(run('high_school', { ...rush, speed: 'slow' }) - row.slow)).toBeLessThanOrEqual(0.02);
  });

  it.each([
    { what: 'wide edge, 4.5 yd out', lateral: 4.5, depth: 0, lane: 'near_C', seconds: 1.57 },
    // How deep a mugged man stands is not said with the figure; between one and a half and two yards gives it.
    { what: 'man mugged in A, 1.75 yd off', lateral: 0.7, depth: 1.75, lane: 'near_A', seconds: 1.63 },
    { what: 'linebacker 4.5 yd deep through B', lateral: 2.4, depth: 4.5, lane: 'near_B', seconds: 2.0 },
    { what: 'overhang 6 by 3', lateral: 6, depth: 3, lane: 'near_C', seconds: 1.98 },
    { what: 'slot 8 by 5', lateral: 8, depth: 5, lane: 'near_C', seconds: 2.3 },
  ] as const)('a college $what is home in $seconds s plus reaction (computed from the sprint figures)', (row) => {
    expect(Math.abs(run('college', row) - row.seconds)).toBeLessThanOrEqual(0.02);
  });

  it('a running start of 2 yd/s brings a college safety from 8 yards through A home in 2.20 s', () => {
    // Computed from the sprint figures, tolerance 0.02.
    expect(
      Math.abs(run('college', { lateral: 0.7, depth: 8, lane: 'near_A', startSpeed: 2 }) - 2.2),
    ).toBeLessThanOrEqual(0.02);
  });

  it.each([
    { passer: 5, change: -0.24 },
    { passer: 8.5, change: 0.17 },
  ])('a passer at $passer yards changes the time by $change s (computed, tolerance 0.03)', ({ passer, change }) => {
    const rush = {
      spot: { lateral: 0.7, depth: 8 },
      lane: 'near_A',
      way: 'straight',
      profile: sprintProfile('college', { group: 'secondary', speed: 'average' }),
    } as const;
    expect(Math.abs(arrivalSeconds(rush, passer) - arrivalSeconds(rush, 7) - change)).toBeLessThanOrEqual(0.03);
  });

  it('no free college rusher beats the fastest ordinary sacks of 1.5 s', () => {
    // Source: published sack times, fastest ordinary sacks 1.5 to 2.0 s (Cooper, Under Pressure, 2011).
    const profile = sprintProfile('college', { group: 'secondary', speed: 'average' });
    const edge = arrivalSeconds({ spot: { lateral: 4.5, depth: 0 }, lane: 'near_C', way: 'straight', profile }, 7);
    expect(edge).toBeGreaterThan(1.5);
    expect(edge).toBeLessThan(2);
  });

  it('a man who reads the back comes later than a looper, and a looper later than a straight rusher', () => {
    expect(START_DELAY.late_if_back_blocks).toBeGreaterThan(START_DELAY.loop);
    expect(START_DELAY.loop).toBeGreaterThan(START_DELAY.straight);
  });
});

describe('rushYards', () => {
  const spots = fc.record({
    lateral: fc.double({ min: -12, max: 12, noNaN: true }),
    depth: fc.double({ min: 0, max: 12, noNaN: true }),
  });

  it('is never shorter than the straight line to the passer', () => {
    fc.assert(
      fc.property(spots, fc.constantFrom(...LANES), (spot, lane) => {
        expect(rushYards(spot, lane, 7)).toBeGreaterThanOrEqual(Math.hypot(spot.lateral, spot.depth + 7) - 1e-9);
      }),
    );
  });

  it('is the same for the mirrored man in the mirrored lane', () => {
    fc.assert(
      fc.property(spots, fc.constantFrom(...LANES), (spot, lane) => {
        const mirrored = (lane.startsWith('near') ? lane.replace('near', 'far') : lane.replace('far', 'near')) as Lane;
        expect(rushYards({ lateral: -spot.lateral, depth: spot.depth }, mirrored, 7)).toBeCloseTo(
          rushYards(spot, lane, 7),
          10,
        );
      }),
    );
  });
});
