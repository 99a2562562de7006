import { ANSWERS, type Answer } from '../../game/answers.ts';
import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { type ExpectedPart, OUTSIDE_WORTH } from '../fit/expected-snaps.ts';
import type { ForecastChapter } from '../forecast/forecast-result.ts';
import { answerCodes } from '../snap/answer.ts';
import { classifiedAnswers } from '../snap/classified-answers.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { offenseGames } from '../snap/offense-game.ts';
import { runOrPassCodes } from '../snap/run-or-pass.ts';
import { tableZoneCodes } from '../tables/table-split.ts';
import { TABLE_ZONES } from '../tables/tables-result.ts';

/** What zone snaps are expected from. */
export interface ZoneFilm {
  readonly chart: Film;
  readonly forecast: ForecastChapter;
  readonly cuts: SituationCuts;
}

/** The snaps to expect in one zone, by answer. */
export interface ZoneSnaps {
  readonly zone: (typeof TABLE_ZONES)[number];
  /** Film snaps of the zone with a known answer. */
  readonly snaps: number;
  readonly parts: readonly ExpectedPart[];
}

/**
 * The snaps to expect in every field zone. How often each answer comes: the zone's own film, with twelve snaps' worth of
 * the forecast over all their snaps, since zones have few. What such a snap looks like: the zone's own snaps with that
 * answer, with twelve snaps' worth of the rest. Runs and passes take the place of the answers where their film does not
 * tell passes apart.
 */
export function zoneSnaps({ chart, forecast, cuts }: ZoneFilm): readonly ZoneSnaps[] {
  const kinds = runOrPassCodes(chart);
  const answers = classifiedAnswers(answerCodes(chart, cuts), kinds, offenseGames(chart));
  const byAnswer = answers.some((code) => code !== NOT_KNOWN);
  const codes = byAnswer ? answers : kinds;
  const target = byAnswer ? 'answer' : 'run_or_pass';
  const all = forecast.forecasts.find((one) => one.target === target && one.situation === 'all');
  const zones = tableZoneCodes(chart, cuts);
  return TABLE_ZONES.map((zone, place) => {
    const inside = (row: number) => zones[row] === place;
    const parts = (all?.classes ?? []).map(({ share }, k) => {
      const rows = Array.from(codes.keys()).filter((row) => codes[row] === k);
      const own = rows.filter(inside).length;
      return {
        alpha: own + OUTSIDE_WORTH * share,
        answer: byAnswer ? answerOf(k) : null,
        rows,
        weights: weightsOf(rows, inside),
      };
    });
    const snaps = Array.from(codes.keys()).filter((row) => codes[row] !== NOT_KNOWN && inside(row)).length;
    return { zone, snaps, parts };
  });
}

function answerOf(code: number): Answer | null {
  return ANSWERS[code] ?? null;
}

/** One for a snap of the zone; the rest share twelve snaps' worth. Sums to 1 where there is a row. */
function weightsOf(rows: readonly number[], inside: (row: number) => boolean): readonly number[] {
  const outside = rows.filter((row) => !inside(row)).length;
  const worth = Math.min(1, OUTSIDE_WORTH / Math.max(1, outside));
  const raw = rows.map((row) => (inside(row) ? 1 : worth));
  const total = raw.reduce((sum, weight) => sum + weight, 0);
  return raw.map((weight) => weight / total);
}
