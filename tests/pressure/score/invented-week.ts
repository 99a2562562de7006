import { filmFromRecords } from '../../../src/game/film.ts';
import { sharedDraws } from '../../../src/pressure/score/family/family-score-draws.ts';
import { type ScoreInput, scoreModel } from '../../../src/pressure/score/family/family-score-model.ts';
import { scoreWeek } from '../../../src/pressure/score/family/family-score-week.ts';
import { type InventedOffense, inventedRecords } from '../invented-offense.ts';
import { plainInput } from './expected-scores.ts';

/** An invented week read and scored with few draws, for tests of what is said about it. */
export function inventedWeek(offense: InventedOffense = {}, change: Partial<ScoreInput> = {}, count = 400) {
  const chart = filmFromRecords(inventedRecords(offense));
  const input = { ...plainInput({ chart }), ...change };
  const model = scoreModel(input);
  return { input, chart, model, week: scoreWeek(model, sharedDraws(model, count)) };
}
