import type { CallLibrary } from '../../game/call-library.ts';
import type { Film } from '../../game/film.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import type { ExactSolver } from '../../stats/exact-solver.ts';
import { archiveWeight } from '../archive/archive-weight.ts';
import { differentChapter } from '../different/different.ts';
import { fitChapter } from '../fit/fit-chapter.ts';
import type { CountRow } from '../forecast/counts/count-row.ts';
import { forecastWeek } from '../forecast/forecast.ts';
import { planMenu } from '../menu/menu.ts';
import { pressuredChapter } from '../pressured/pressured.ts';
import { protectionChapter } from '../protection/protection-chapter.ts';
import { scoreChapter } from '../score/score-chapter.ts';
import { ownFilmChapter } from '../self-scout/own-film.ts';
import { readerOnPlan } from '../self-scout/reader-on-plan.ts';
import { opponentTables } from '../tables/tables.ts';
import type { FilmChapter, WeekPlan } from './week-plan.ts';

/** Everything a plan is made from; `archive`, `ownFilm` and `library` may be absent. */
export interface WeekInput {
  readonly chart: Film;
  readonly archive: Film | null;
  /** Tallies of other offenses that join the archive's film in the forecast. */
  readonly counts?: readonly CountRow[];
  readonly ownFilm: Film | null;
  readonly library: CallLibrary | null;
  readonly settings: WeekSettings;
  readonly film: FilmChapter;
  /** YYYY-MM-DD. */
  readonly date: string;
  readonly version: string;
  /** Proves the menu where its own search stops; large, so the caller loads it where it may be needed. */
  readonly exact?: ExactSolver | undefined;
  /** Told the name of each stage as it begins. */
  readonly onStage?: (stage: string) => void;
}

/**
 * Works out one week: forecast, protection and race, family scores, our own film, menu, and the menu. Pure:
 * the same input gives the same plan.
 */
export function planWeek(input: WeekInput): WeekPlan {
  const { chart, archive, ownFilm, library, settings } = input;
  const seed = settings.seed;
  const stage = input.onStage ?? (() => undefined);
  stage('Forecasting their answers');
  const forecast = forecastWeek({ chart, archive, counts: input.counts ?? [], settings, seed });
  const cuts = settings.situations;
  const pressured = pressuredChapter({ chart, archive, forecasts: forecast.forecasts, cuts });
  stage('Matching protections and racing the ball');
  const protection = protectionChapter({ chart, archive, library, settings, forecast, seed });
  stage('Scoring the families');
  const scores = scoreChapter({ chart, ownFilm, library, settings, forecast, protection });
  const fit = fitChapter({ chart, forecast, pressured, library, cuts, seed });
  stage('Reading our own film');
  const ours = ownFilm ? ownFilmChapter({ ownFilm, library, settings, scores, seed }) : null;
  stage('Choosing the menu');
  const { soundness } = protection;
  const habits = ours?.remedy.habits;
  const menu = library ? planMenu({ library, settings, scores, soundness, habits, exact: input.exact }) : null;
  return {
    schema: 'pressure-plan.week/2',
    version: input.version,
    opponent: settings.opponent,
    us: settings.us,
    date: input.date,
    seed,
    settings,
    library,
    film: input.film,
    forecast,
    pressured,
    tables: opponentTables({ chart, archive, cuts }),
    different: differentChapter({ chart, archive, cuts, pressured, tells: forecast.tells }),
    archive: archiveWeight({ chart, archive, settings, forecast }),
    protection,
    scores,
    fit,
    menu,
    ownFilm: ours && { ...ours, onPlan: menu?.kind === 'menu' ? readerOnPlan(ours, menu) : null },
  };
}
