import { describe, expect, it } from 'vitest';
import { chartFromRecords, type SnapRecord } from '../../src/ingest/chart.ts';
import { weekSettingsSchema } from '../../src/ingest/week-settings.ts';
import type { ForecastChapter } from '../../src/pressure/forecast-result.ts';
import { reviewIntervals } from '../../src/pressure/review-interval.ts';
import { reviewScores } from '../../src/pressure/review-score.ts';
import { betaBinomialPmf } from '../../src/stats/beta-binomial.ts';
import { createRandom } from '../../src/stats/random.ts';
import { multiclassLogLoss } from '../../src/stats/scores.ts';
import { inventedForecast } from '../report/invented-forecast.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Nobody' }).situations;
const chapter = inventedForecast();
const only = (target: string): ForecastChapter => ({
  ...chapter,
  forecasts: chapter.forecasts.filter((forecast) => forecast.target === target),
});

describe('the forecast against the game', () => {
  const records: SnapRecord[] = [
    { down: 3, to_go: 9, play_kind: 'screen' },
    { down: 3, to_go: 9, play_kind: 'dropback' },
    { down: 1, to_go: 10, play_kind: 'run' },
    { play_kind: 'quick' },
    { down: 1, to_go: 10, play_kind: 'pass' },
  ];

  it('is the mean log loss of the situation’s shares, as the scoring library computes it', () => {
    const [answers] = reviewScores(only('answer'), chartFromRecords(records), cuts);
    const sharesIn = (situation: string) =>
      chapter.forecasts
        .find((forecast) => forecast.target === 'answer' && forecast.situation === situation)
        ?.classes.map(({ share }) => share) ?? [];
    const forecasts = ['third_long', 'third_long', 'first_ten', 'all'].map(sharesIn);
    expect(answers?.snaps).toBe(4);
    expect(answers?.model).toBeCloseTo(multiclassLogLoss(forecasts, [2, 4, 0, 3]), 9);
  });

  it('measures the plain rate with half a snap added to every class', () => {
    const [answers] = reviewScores(only('answer'), chartFromRecords(records.slice(0, 1)), cuts);
    const film = chapter.forecasts.find(({ target, situation }) => target === 'answer' && situation === 'all');
    const screens = film?.classes.find(({ name }) => name === 'screen')?.film;
    const rate = ((screens?.count ?? 0) + 0.5) / ((screens?.trials ?? 0) + 3.5);
    expect(answers?.plainRate).toBeCloseTo(-Math.log(rate), 9);
    expect(answers?.standardError).toBeNull();
  });

  it('keeps forecast and outcome of two-class targets for the season', () => {
    const [runs] = reviewScores(only('run_or_pass'), chartFromRecords(records.slice(0, 3)), cuts);
    expect(runs?.pairs.map(([, came]) => came)).toEqual([0, 0, 1]);
    expect(reviewScores(only('answer'), chartFromRecords(records), cuts)[0]?.pairs).toEqual([]);
  });

  it('says nothing of what was not charted', () => {
    expect(reviewScores(chapter, chartFromRecords([{ down: 1, to_go: 10 }]), cuts)).toEqual([]);
  });
});

describe('counts against their ranges', () => {
  it('holds a plain count and misses an absurd one', () => {
    const share = only('screen').forecasts.find(({ situation }) => situation === 'all')?.classes[0]?.share ?? 0;
    const gameOf = (screens: number) =>
      chartFromRecords(
        Array.from({ length: 40 }, (_, i) => ({
          down: 1,
          to_go: 10,
          play_kind: i < screens ? 'screen' : 'dropback',
        })),
      );
    const usual = reviewIntervals(only('screen'), gameOf(Math.round(40 * share)), cuts);
    expect(usual.hits).toMatchObject({ count: usual.checks.length });
    const absurd = reviewIntervals(only('screen'), gameOf(40), cuts);
    expect(absurd.checks.find(({ situation }) => situation === 'all')).toMatchObject({ came: 40, hit: false });
  });

  it('checks nothing under five snaps', () => {
    const four = Array(4).fill({ down: 1, to_go: 10, play_kind: 'screen' });
    expect(reviewIntervals(chapter, chartFromRecords(four), cuts)).toMatchObject({
      checks: [],
      hits: { trials: 0, estimate: null },
    });
  });

  it('holds at least 93 in 100 of games drawn from the forecast with the usual game-to-game spread', () => {
    const forecast = only('screen').forecasts.find(({ situation }) => situation === 'first_ten');
    if (!forecast) throw new Error('the invented forecast has first downs');
    const alone = { ...chapter, forecasts: [forecast] };
    const settled = forecast.classes.reduce((sum, { alpha }) => sum + alpha, 0);
    const source = 'PREDICTION 6: S = 1 / (1 / (n + M) + 1 / phi), phi 160 for screens';
    const pmf = betaBinomialPmf({
      trials: 30,
      mean: forecast.classes[0]?.share ?? 0,
      concentration: 1 / (1 / settled + 1 / 160),
    });
    const random = createRandom('games');
    const hits = Array.from({ length: 200 }, () => {
      let rest = random.uniform();
      const screens = pmf.findIndex((p) => {
        rest -= p;
        return rest < 0;
      });
      const snaps = Array.from({ length: 30 }, (_, i) => ({
        down: 1,
        to_go: 10,
        play_kind: i < screens ? 'screen' : 'dropback',
      }));
      return reviewIntervals(alone, chartFromRecords(snaps), cuts).checks[0]?.hit;
    });
    expect(hits.filter(Boolean).length / hits.length, source).toBeGreaterThanOrEqual(0.93);
  });
});
