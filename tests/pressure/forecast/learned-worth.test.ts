import { describe, expect, it } from 'vitest';
import { type InventedLeague, inventedLeague } from '../../../bench/invented-league.ts';
import { filmFromRecords } from '../../../src/game/film.ts';
import { SITUATIONS } from '../../../src/game/situations.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { nodeAt } from '../../../src/pressure/forecast/chain-tree.ts';
import { fitTarget, forecastFilm } from '../../../src/pressure/forecast/forecast-film.ts';
import { RUN_OR_PASS } from '../../../src/pressure/forecast/target.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Opponent' }).situations;
const LOOK_ALIKES: InventedLeague = { seed: '', spread: 0.05, archive: 8, opponent: 'average', gameToGame: 36 };

/** Share of runs on film, forecast from it, and in the archive, over all snaps and on third and long. */
function read(league: InventedLeague) {
  const snaps = inventedLeague(league);
  const own = snaps.filter(({ offense, week }) => offense === 'Opponent' && Number(week) <= 4);
  const others = snaps.filter(({ offense }) => offense !== 'Opponent');
  const archive = others.length === 0 ? null : filmFromRecords(others);
  const { fit, own: tally, tree } = fitTarget(forecastFilm(filmFromRecords(own), archive, cuts), RUN_OR_PASS, 'plan');
  const at = (node: number) => ({
    film: tally.counts[2 * node]! / (tally.counts[2 * node]! + tally.counts[2 * node + 1]!),
    forecast: fit.shares[2 * node]!,
  });
  const thirdLong = SITUATIONS.findIndex(({ id }) => id === 'third_long');
  const cell = nodeAt(tree, [thirdLong]);
  return { all: at(0), thirdLong: at(cell), weight: fit.ownWeight[0]!, cellWeight: fit.ownWeight[cell]! };
}

const SEEDS = [1, 2, 3, 4, 5, 6];
const mean = (numbers: readonly number[]) => numbers.reduce((sum, n) => sum + n, 0) / numbers.length;
const readAll = (change: Partial<InventedLeague>) =>
  SEEDS.map((seed) => read({ ...LOOK_ALIKES, ...change, seed: `${seed}` }));

describe('an opponent unlike a league of look-alikes', () => {
  for (const [name, run] of [
    ['option team', 0.89],
    ['air raid', 0.16],
  ] as const) {
    it(`is forecast near his film: ${name}, in any archive`, () => {
      for (const archive of [2, 8]) {
        for (const { all, weight } of readAll({ opponent: run, archive })) {
          expect(Math.abs(all.forecast - all.film)).toBeLessThan(0.05);
          expect(weight).toBeGreaterThan(0.8);
        }
      }
    });
  }

  it('keeps his own third downs where he ignores down and distance', () => {
    const found = readAll({ opponent: 0.7, ignoresSituations: true });
    const off = mean(found.map(({ thirdLong }) => thirdLong.film - thirdLong.forecast));
    expect(Math.abs(off)).toBeLessThan(0.08);
  });
});

describe('film alone', () => {
  it('leans on the rate over all snaps where down and distance tell little, and less where they tell much', () => {
    const [flat, usual] = [true, false].map((ignoresSituations) =>
      mean(readAll({ archive: 0, opponent: 0.5, ignoresSituations }).map(({ cellWeight }) => cellWeight)),
    );
    expect(flat).toBeLessThan(usual! - 0.2);
  });
});

describe('an opponent like the league', () => {
  it('leans on it: his film counts less than in a league of many styles', () => {
    const [alike, apart] = [readAll({}), readAll({ spread: 0.18 })].map((found) =>
      mean(found.map(({ weight }) => weight)),
    );
    expect(alike).toBeLessThan(apart! - 0.1);
  });

  it('is his own film alone without an archive, half a snap a class added', () => {
    for (const { all, weight } of readAll({ archive: 0 })) {
      expect(weight).toBeGreaterThan(0.99);
      expect(all.forecast).toBeCloseTo((all.film * 240 + 0.5) / 241, 12);
    }
  });
});
