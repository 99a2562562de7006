import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { averageWorth, leagueWorth } from '../../../src/pressure/forecast/league-worth.ts';
import { WORTHS } from '../../../src/pressure/forecast/worth-grid.ts';

const offense = (runs: number, passes: number) => ({ counts: Float64Array.of(runs, passes, 0, 0), games: 4 });
/** Games alike, so that every snap is evidence of its own. */
const ALIKE = { classes: 2, gameToGame: 1e12 };
const middle = (chances: Float64Array) => chances.reduce((sum, chance, i) => sum + chance * Math.log(WORTHS[i]!), 0);

describe('what an archive is worth', () => {
  it('weighs each worth by the chance of each offense given the others, a quarter left to the first belief', () => {
    const counts = [
      [30, 20],
      [12, 28],
      [25, 15],
    ] as const;
    const { chances } = leagueWorth(
      counts.map(([runs, passes]) => offense(runs, passes)),
      ALIKE,
    );
    // By hand: the chance of the very snaps, one after another, from an urn with the others' shares.
    const logs = [...WORTHS].map((worth) => counts.map((own) => urnOf(own, counts, worth)).reduce((a, b) => a + b, 0));
    const belief = scaled([...WORTHS].map((worth) => -((Math.log(worth / 32) / 1.2) ** 2) / 2));
    const learned = scaled(logs.map((log, i) => log + Math.log(belief[i]!)));
    chances.forEach((chance, i) => {
      expect(chance).toBeCloseTo(0.25 * belief[i]! + 0.75 * learned[i]!, 9);
    });
  });

  it('is more where offenses are alike than where they differ, and learns nothing from one alone', () => {
    const alike = leagueWorth([offense(30, 30), offense(31, 29), offense(29, 31), offense(30, 30)], ALIKE);
    const apart = leagueWorth([offense(50, 10), offense(12, 48), offense(29, 31), offense(8, 52)], ALIKE);
    const alone = leagueWorth([offense(50, 10)], ALIKE);
    expect(middle(alike.chances)).toBeGreaterThan(middle(alone.chances) + 0.5);
    expect(middle(apart.chances)).toBeLessThan(middle(alone.chances) - 0.5);
    expect(middle(alone.chances)).toBeCloseTo(Math.log(32), 1);
  });

  it('counts offenses by how even their film is: Kish by hand, (60 + 60 + 30)^2 / (2 * 60^2 + 30^2) = 2.78', () => {
    expect(leagueWorth([offense(30, 30), offense(31, 29), offense(15, 15)], ALIKE).offenses).toBeCloseTo(
      22500 / 8100,
      9,
    );
  });

  it('takes snaps of one game for less than as many of different games', () => {
    const swaying = leagueWorth([offense(50, 10), offense(12, 48)], { classes: 2, gameToGame: 14 });
    expect(swaying.snaps).toBeCloseTo((2 * 60) / (1 + 14 / 15), 9);
  });
});

describe('averageWorth', () => {
  it('adds up what is not known: how offenses differ, how many there are, how much film', () => {
    expect(averageWorth(1024, { snaps: 256, offenses: 4 }), 'by hand: 4096 / 21').toBeCloseTo(4096 / 21, 9);
    expect(averageWorth(64, { snaps: 0, offenses: 1 })).toBe(averageWorth(64, { snaps: 1, offenses: 1 }));
  });

  it('grows with snaps and offenses, and never beyond its strength or its snaps', () => {
    const count = fc.integer({ min: 1, max: 5000 });
    fc.assert(
      fc.property(count, count, fc.integer({ min: 1, max: 60 }), (strength, snaps, offenses) => {
        const worth = averageWorth(strength, { snaps, offenses });
        expect(worth).toBeLessThan(Math.min(strength, snaps));
        expect(averageWorth(strength, { snaps: snaps + 1, offenses })).toBeGreaterThan(worth);
        expect(averageWorth(strength, { snaps, offenses: offenses + 1 })).toBeGreaterThan(worth);
      }),
    );
  });
});

type Counts = readonly [number, number];

function urnOf(own: Counts, all: readonly Counts[], worth: number): number {
  const others = all.filter((counts) => counts !== own);
  const [runs, passes] = [0, 1].map((k) => others.reduce((sum, counts) => sum + (counts[k] as number), 0));
  const snaps = runs! + passes!;
  const sizes = others.map(([a, b]) => a + b);
  const kish = snaps ** 2 / sizes.reduce((sum, size) => sum + size ** 2, 0);
  // Half a snap a class, and sixteen snaps of all situations beside those of the one there is.
  const share = (runs! + (16 * (runs! + 0.5)) / (snaps + 1)) / (snaps + 16);
  const strength = 1 / ((1 + 1 / kish) / worth + 1 / snaps);
  const balls = [share * strength, (1 - share) * strength];
  let log = 0;
  [0, 1].forEach((k) => {
    for (let i = 0; i < own[k]!; i++) {
      log += Math.log(balls[k]! / (balls[0]! + balls[1]!));
      balls[k] = balls[k]! + 1;
    }
  });
  return log;
}

function scaled(logs: readonly number[]): number[] {
  const top = Math.max(...logs);
  const total = logs.reduce((sum, log) => sum + Math.exp(log - top), 0);
  return logs.map((log) => Math.exp(log - top) / total);
}
