import { type Film, filmFromRecords } from '../../../src/game/film.ts';
import { protectionChapter } from '../../../src/pressure/protection/protection-chapter.ts';
import { pointsWeek } from '../../../src/pressure/score/points-mix.ts';
import { pointsModel, type ScoreInput } from '../../../src/pressure/score/points-model.ts';
import { demoDefense } from '../demo-defense.ts';
import {
  countedForecast,
  type InventedOffense,
  inventedRecords,
  inventedSettings,
  unraced,
} from '../invented-offense.ts';

/** The score input of an invented film without a library: families alone, no race. */
export function plainInput(chart: Film, change: Partial<ScoreInput> = {}): ScoreInput {
  const settings = change.settings ?? inventedSettings();
  const forecast = countedForecast(chart, settings);
  return { chart, ownFilm: null, library: null, settings, forecast, protection: unraced(), ...change };
}

/** The score input of an invented film raced with the demo library. */
export function racedInput(chart: Film): ScoreInput {
  const input = plainInput(chart, { library: demoDefense });
  const protection = protectionChapter({ ...input, library: demoDefense, archive: null });
  return { ...input, protection };
}

/** An invented offense read and mixed. */
export function inventedWeek(offense: InventedOffense = {}, change: Partial<ScoreInput> = {}) {
  const chart = filmFromRecords(inventedRecords(offense));
  const input = plainInput(chart, change);
  const model = pointsModel(input);
  return { input, model, week: pointsWeek(model) };
}
