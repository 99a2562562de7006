import type { CallLibrary } from '../../game/call-library.ts';
import type { Film } from '../../game/film.ts';
import type { SituationId } from '../../game/situations.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import { type RaceEdge, raceEdge } from '../evidence/evidence-race.ts';
import type { OwnFilmPoints } from '../evidence/own-film-points.ts';
import { ownFilmPoints } from '../evidence/own-film-points.ts';
import { type ZoneShares, zoneShares } from '../evidence/snap-place.ts';
import type { ForecastChapter } from '../forecast/forecast-result.ts';
import type { ProtectionChapter } from '../protection/protection-result.ts';
import { type SituationAnswers, situationAnswers } from './situation-answers.ts';

/** What the families are scored from. */
export interface ScoreInput {
  /** The opponent's charted snaps. */
  readonly chart: Film;
  /** Our own charted snaps, where there are any. */
  readonly ownFilm: Film | null;
  /** Our calls; without them only the families are scored. */
  readonly library: CallLibrary | null;
  readonly settings: WeekSettings;
  readonly forecast: ForecastChapter;
  readonly protection: ProtectionChapter;
}

/** Everything that bears on points, read once: what they do and where, how the race stands, what our film says. */
export interface PointsModel {
  readonly settings: WeekSettings;
  readonly situations: readonly SituationAnswers[];
  readonly zones: ReadonlyMap<SituationId, ZoneShares>;
  readonly race: RaceEdge;
  readonly ownFilm: OwnFilmPoints;
}

/** Reads the input into one model; nothing in it is drawn. */
export function pointsModel({ chart, ownFilm, library, settings, forecast, protection }: ScoreInput): PointsModel {
  return {
    settings,
    situations: situationAnswers(forecast),
    zones: zoneShares(chart, settings.situations),
    race: raceEdge(library, protection),
    ownFilm: ownFilmPoints(ownFilm, library, settings.situations),
  };
}

/** Weights of the situations over a game: their expected snaps, or all alike when none are expected; they sum to 1. */
export function situationWeights(situations: readonly SituationAnswers[]): readonly number[] {
  const total = situations.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0);
  return situations.map(({ expectedSnaps }) => (total === 0 ? 1 / situations.length : expectedSnaps / total));
}
