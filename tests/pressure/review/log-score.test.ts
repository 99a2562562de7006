import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import type { ForecastChapter } from '../../../src/pressure/forecast/forecast-result.ts';
import { reviewScores } from '../../../src/pressure/review/log-score.ts';
import { multiclassLogLoss } from '../../../src/stats/scores.ts';
import { inventedForecast } from '../../report/invented-forecast.ts';

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
    const [answers] = reviewScores(only('answer'), filmFromRecords(records), cuts);
    const sharesIn = (situation: string) =>
      chapter.forecasts
        .find((forecast) => forecast.target === 'answer' && forecast.situation === situation)
        ?.classes.map(({ share }) => share) ?? [];
    const forecasts = ['third_long', 'third_long', 'first_ten', 'all'].map(sharesIn);
    expect(answers?.snaps).toBe(4);
    expect(answers?.model).toBeCloseTo(multiclassLogLoss(forecasts, [2, 4, 0, 3]), 9);
  });

  it('measures the plain rate with half a snap added to every class', () => {
    const [answers] = reviewScores(only('answer'), filmFromRecords(records.slice(0, 1)), cuts);
    const film = chapter.forecasts.find(({ target, situation }) => target === 'answer' && situation === 'all');
    const screens = film?.classes.find(({ name }) => name === 'screen')?.film;
    const rate = ((screens?.count ?? 0) + 0.5) / ((screens?.trials ?? 0) + 3.5);
    expect(answers?.plainRate).toBeCloseTo(-Math.log(rate), 9);
    expect(answers?.standardError).toBeNull();
  });

  it('keeps forecast and outcome of two-class targets for the season', () => {
    const [runs] = reviewScores(only('run_or_pass'), filmFromRecords(records.slice(0, 3)), cuts);
    expect(runs?.pairs.map(({ came }) => came)).toEqual([0, 0, 1]);
    expect(reviewScores(only('answer'), filmFromRecords(records), cuts)[0]?.pairs).toEqual([]);
  });

  it('says nothing of what was not charted', () => {
    expect(reviewScores(chapter, filmFromRecords([{ down: 1, to_go: 10 }]), cuts)).toEqual([]);
  });
});
