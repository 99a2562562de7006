import type { Film } from '../../../src/game/film.ts';
import { FAMILIES, type Family } from '../../../src/game/vocabulary.ts';
import type { WeekSettings } from '../../../src/game/week-settings.ts';
import type { ForecastChapter } from '../../../src/pressure/forecast/forecast-result.ts';
import { protectionChapter } from '../../../src/pressure/protection/protection-chapter.ts';
import { situationCells } from '../../../src/pressure/score/family/family-score-means.ts';
import { type ScoreInput, scoreModel } from '../../../src/pressure/score/family/family-score-model.ts';
import { expectedSaved, SNAPS_PER_SCORE } from '../../../src/pressure/score/family/family-score-points.ts';
import { demoDefense } from '../demo-defense.ts';
import { countedForecast, inventedSettings, unraced } from '../invented-offense.ts';

/** Points saved per ten snaps by family over the week's expected mix. */
export type ExpectedScores = Readonly<Record<Family, number>>;

/** What an invented week is scored from; the forecast is counted from the chart where it is not given. */
export interface InventedWeek {
  readonly chart: Film;
  readonly settings?: WeekSettings;
  readonly forecast?: ForecastChapter;
}

/** The score input of an invented week raced with the demo library. */
export function racedInput({ chart, settings = inventedSettings(), forecast }: InventedWeek): ScoreInput {
  const planned = forecast ?? countedForecast(chart, settings);
  const raced = { chart, archive: null, library: demoDefense, settings, forecast: planned, seed: 1 };
  const protection = protectionChapter(raced);
  return { chart, ownFilm: null, library: demoDefense, settings, forecast: planned, protection, seed: 1 };
}

/** The score input of an invented week without a library: families alone, no race. */
export function plainInput({ chart, settings = inventedSettings(), forecast }: InventedWeek): ScoreInput {
  const planned = forecast ?? countedForecast(chart, settings);
  return { chart, ownFilm: null, library: null, settings, forecast: planned, protection: unraced(), seed: 1 };
}

/** The exact expectation every score is centred on, without drawing: cells times answer shares, by situation. */
export function expectedScores(input: ScoreInput): ExpectedScores {
  const model = scoreModel(input);
  const cells = model.situations.map((_, s) => situationCells(model, s));
  const draws = null as never; // the expectation reads no draw
  const scores = FAMILIES.map((family, f) => {
    const points = cells.reduce(
      (sum, own, s) => sum + (model.weights[s] ?? 0) * expectedSaved({ model, draws, cells: own, s }, f),
      0,
    );
    return [family, SNAPS_PER_SCORE * points] as const;
  });
  return Object.fromEntries(scores) as Record<Family, number>;
}
