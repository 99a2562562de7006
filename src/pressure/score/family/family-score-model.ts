import type { CallLibrary } from '../../../game/call-library.ts';
import type { Film } from '../../../game/film.ts';
import type { WeekSettings } from '../../../game/week-settings.ts';
import { type JoinedEvidence, joinEvidence } from '../../evidence/evidence.ts';
import { countOwnFilm, type OwnFilmCounts } from '../../evidence/evidence-own-film.ts';
import { type RaceEdge, raceEdge } from '../../evidence/evidence-race.ts';
import { judgementShare } from '../../evidence/judgement.ts';
import { type AnswerHabits, answerHabits } from '../../evidence/judgement-habits.ts';
import { type OffenseLooks, readLooks } from '../../evidence/judgement-looks.ts';
import type { ForecastChapter } from '../../forecast/forecast-result.ts';
import type { ProtectionChapter } from '../../protection/protection-result.ts';
import { type SituationAnswers, situationAnswers, situationWeights } from './family-score-answers.ts';

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
  readonly seed: number;
}

/** Everything that bears on a score, read once: what they do, what is known of each family, how the race stands. */
export interface ScoreModel {
  readonly settings: WeekSettings;
  readonly seed: number;
  readonly situations: readonly SituationAnswers[];
  /** Weights of the situations in the overall score, summing to 1. */
  readonly weights: Float64Array;
  readonly ownFilm: OwnFilmCounts;
  readonly evidence: JoinedEvidence;
  readonly habits: AnswerHabits;
  readonly looks: OffenseLooks;
  readonly race: RaceEdge;
  /** Share of a typical cell that is judgement, 0 to 1: what a mark counts for. */
  readonly markWeight: number;
}

/** Reads the input into one model; no drawing, no randomness. */
export function scoreModel(input: ScoreInput): ScoreModel {
  const { chart, settings, forecast, library } = input;
  const situations = situationAnswers(forecast);
  const ownFilm = countOwnFilm(input.ownFilm, library, settings.situations);
  const habits = answerHabits(chart);
  return {
    settings,
    seed: input.seed,
    situations,
    weights: situationWeights(situations),
    ownFilm,
    evidence: joinEvidence({ settings, ownFilm, habits }),
    habits,
    looks: readLooks(chart, forecast, settings.situations),
    race: raceEdge(library, input.protection),
    markWeight: judgementShare(settings),
  };
}
