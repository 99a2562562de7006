import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import type { ForecastChapter } from '../../../src/pressure/forecast/forecast-result.ts';
import { forecastWeek } from '../../../src/pressure/forecast/week/forecast.ts';
import { checkCounts } from '../../../src/pressure/review/count-range.ts';
import { rangeHits } from '../../../src/pressure/review/range-hits.ts';
import { betaBinomialPmf } from '../../../src/stats/beta-binomial.ts';
import { createRandom } from '../../../src/stats/random.ts';
import { inventedForecast } from '../../report/invented-forecast.ts';

const settings = weekSettingsSchema.parse({ opponent: 'Nobody' });
const cuts = settings.situations;
const chapter = inventedForecast();
const only = (target: string): ForecastChapter => ({
  ...chapter,
  forecasts: chapter.forecasts.filter((forecast) => forecast.target === target),
});
/** Three games of twenty snaps in which every kind of play comes. */
const inventedFilm = () =>
  filmFromRecords(
    Array.from({ length: 60 }, (_, i) => ({
      game: `g${i % 3}`,
      offense: 'Nobody',
      down: 1 + (i % 3),
      to_go: 10 - (i % 4),
      play_kind: ['run', 'run', 'quick', 'dropback', 'screen', 'movement'][i % 6] ?? 'run',
    })),
  );
const gameOf = (snaps: number, screens: number) =>
  filmFromRecords(
    Array.from({ length: snaps }, (_, i) => ({ down: 1, to_go: 10, play_kind: i < screens ? 'screen' : 'dropback' })),
  );

describe('counts against their ranges', () => {
  it('a plain count of all snaps lies in both ranges and an absurd one in none', () => {
    const share = only('screen').forecasts.find(({ situation }) => situation === 'all')?.classes[0]?.share ?? 0;
    const usual = checkCounts(only('screen'), gameOf(40, Math.round(40 * share)), cuts);
    expect(usual.find(({ situation }) => situation === 'all')).toMatchObject({
      outer: { hit: true },
      inner: { hit: true },
    });
    const absurd = checkCounts(only('screen'), gameOf(40, 40), cuts).find(({ situation }) => situation === 'all');
    expect(absurd).toMatchObject({ came: 40, snaps: 40, outer: { hit: false }, inner: { hit: false } });
  });

  it('is the very range of Sunday’s page where as many snaps came as were expected', () => {
    const chart = inventedFilm();
    const sunday = forecastWeek({ chart, archive: null, settings });
    const all = sunday.forecasts.find(({ target, situation }) => target === 'answer' && situation === 'all');
    const checks = checkCounts(sunday, gameOf(Math.round(all?.nextSnaps ?? 0), 9), cuts);
    expect(all?.expected.length).toBeGreaterThan(2);
    for (const { name, low, high } of all?.expected ?? []) {
      const check = checks.find(
        (entry) => entry.target === 'answer' && entry.situation === 'all' && entry.name === name,
      );
      expect(check?.outer).toMatchObject({ low, high });
    }
  });

  it('checks nothing under five snaps, and of two classes only the first', () => {
    expect(checkCounts(chapter, gameOf(4, 4), cuts)).toEqual([]);
    expect(new Set(checkCounts(only('screen'), gameOf(9, 3), cuts).map(({ name }) => name))).toEqual(
      new Set(['screen']),
    );
    expect(rangeHits([])).toMatchObject({
      outer: { hits: { trials: 0, estimate: null }, expected: null, width: null },
    });
  });

  it('expects more hits than the level where whole numbers cannot do otherwise', () => {
    const { outer, inner } = rangeHits(checkCounts(chapter, gameOf(12, 2), cuts));
    expect(outer.expected).toBeGreaterThanOrEqual(0.95);
    expect(inner.expected).toBeGreaterThanOrEqual(0.5);
    expect(outer.expected).toBeLessThanOrEqual(1);
    expect(outer.width).toBeGreaterThan(inner.width ?? 1);
  });

  it('sums up hits, what was due and how wide the ranges were of their snaps', () => {
    const check = (snaps: number, outer: readonly [low: number, high: number, hit: boolean, chance: number]) => {
      const [low, high, hit, chance] = outer;
      const range = { low, high, hit, chance };
      return {
        target: 'screen',
        situation: 'all',
        name: 'screen',
        snaps,
        came: 3,
        expected: 0.2,
        outer: range,
        inner: range,
      };
    };
    // 5 of 20 and 1 of 10 wide: .25 and .1, on average .175.
    const { outer } = rangeHits([
      check(20, [4, 9, true, 0.98]),
      check(10, [1, 2, false, 0.96]),
    ] as unknown as Parameters<typeof rangeHits>[0]);
    expect(outer.hits).toMatchObject({ count: 1, trials: 2 });
    expect(outer.expected).toBeCloseTo(0.97, 12);
    expect(outer.width).toBeCloseTo(0.175, 12);
  });

  it('holds games drawn from the forecast as often as it says, in both ranges', () => {
    const forecast = only('screen').forecasts.find(({ situation }) => situation === 'first_ten');
    if (!forecast) throw new Error('the invented forecast has first downs');
    const settled = forecast.classes.reduce((sum, { alpha }) => sum + alpha, 0);
    const source =
      'own derivation, no source: S = 1 / (1 / (n + M) + 1 / phi), phi 160 for screens as measured on open play data';
    const mean = forecast.classes[0]?.share ?? 0;
    const pmf = betaBinomialPmf({ trials: 30, mean, concentration: 1 / (1 / settled + 1 / 160) });
    const random = createRandom('games');
    const checks = Array.from({ length: 400 }, () => {
      let rest = random.uniform();
      const screens = pmf.findIndex((p) => {
        rest -= p;
        return rest < 0;
      });
      return checkCounts({ ...chapter, forecasts: [forecast] }, gameOf(30, screens), cuts);
    }).flat();
    const { outer, inner } = rangeHits(checks);
    for (const hits of [outer, inner]) {
      const error = 3 * Math.sqrt(((hits.expected ?? 0) * (1 - (hits.expected ?? 0))) / 400);
      expect(Math.abs((hits.hits.estimate ?? 0) - (hits.expected ?? 0)), source).toBeLessThan(error);
    }
  });
});
