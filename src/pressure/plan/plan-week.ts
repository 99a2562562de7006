import type { CallLibrary } from '../../game/call-library.ts';
import type { Film } from '../../game/film.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import type { ExactSolver } from '../../stats/exact-solver.ts';
import { archiveWeight } from '../archive/archive-weight.ts';
import { differentChapter } from '../different/different.ts';
import { fitChapter } from '../fit/fit-chapter.ts';
import type { CountRow } from '../forecast/counts/count-row.ts';
import { forecastWeek } from '../forecast/week/forecast.ts';
import type { MenuInput } from '../menu/input.ts';
import { planMenu } from '../menu/menu.ts';
import type { MenuResult } from '../menu/result.ts';
import { pressuredChapter } from '../pressured/pressured.ts';
import { protectionChapter } from '../protection/protection-chapter.ts';
import type { ProtectionChapter } from '../protection/protection-result.ts';
import { scoreChapter } from '../score/score-chapter.ts';
import type { ScoreChapter } from '../score/score-result.ts';
import { carriedRemedy, ownFilmChapter } from '../self-scout/own-film.ts';
import { ownHabits } from '../self-scout/own-habits.ts';
import { readerOnPlan } from '../self-scout/reader-on-plan.ts';
import type { OwnFilmChapter } from '../self-scout/result.ts';
import { opponentTables } from '../tables/tables.ts';
import { zoneCalls } from '../zone/zone-calls.ts';
import type { FilmChapter, WeekPlan } from './week-plan.ts';

/** What a plan is at while it is worked out. */
export type PlanStage = 'forecast' | 'protection' | 'scores' | 'own_film' | 'menu';

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
  /** Chooses the menu; large, so the caller loads it where there is a library. Without it there is no menu. */
  readonly exact?: ExactSolver | undefined;
  /** Called with the name of each stage as it begins. */
  readonly onStage?: (stage: PlanStage) => void;
}

/**
 * Works out one week: forecast, protection and race, family scores, our own film, and the menu. Pure:
 * the same input gives the same plan.
 */
export function planWeek(input: WeekInput): WeekPlan {
  const { chart, archive, ownFilm, library, settings } = input;
  const seed = settings.seed;
  const stage = input.onStage ?? (() => undefined);
  stage('forecast');
  const forecast = forecastWeek({ chart, archive, counts: input.counts ?? [], settings });
  const cuts = settings.situations;
  const pressured = pressuredChapter({ chart, archive, forecasts: forecast.forecasts, cuts });
  stage('protection');
  const protection = protectionChapter({ chart, archive, library, settings, forecast });
  stage('scores');
  const scores = scoreChapter({ chart, ownFilm, library, settings, forecast, protection });
  const fit = fitChapter({ chart, forecast, pressured, library, cuts, seed });
  stage('own_film');
  const ours = ownFilm ? ownFilmChapter({ ownFilm, library, settings, scores, seed }) : null;
  stage('menu');
  const menu =
    library && input.exact
      ? planMenu(menuInput(input, { library, exact: input.exact, scores, fit, protection, ours }))
      : null;
  return {
    schema: 'pressure-plan.week/4',
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
    zones: zoneCalls({ chart, forecast, cuts, library, menu }),
    ownFilm: ours && ownFilmOnMenu({ ...input, scores }, ours, menu),
  };
}

interface MenuParts extends Pick<MenuInput, 'library' | 'exact' | 'scores' | 'fit'> {
  readonly protection: ProtectionChapter;
  readonly ours: OwnFilmChapter | null;
}

function menuInput({ ownFilm, settings }: WeekInput, { protection, ours, ...parts }: MenuParts): MenuInput {
  return {
    ...parts,
    settings,
    soundness: protection.soundness,
    own: ours && ownFilm ? ownHabits(ours, ownFilm) : null,
  };
}

/** Our own film against the week's menu: how a reader fares, and a remedy that names only paths we carry. */
function ownFilmOnMenu(
  { ownFilm, library, settings, scores }: WeekInput & { readonly scores: ScoreChapter },
  ours: OwnFilmChapter,
  menu: MenuResult | null,
): OwnFilmChapter {
  if (menu?.kind !== 'menu' || ownFilm === null) return ours;
  const film = { ownFilm, library, settings, scores, seed: settings.seed };
  const remedy = carriedRemedy(
    film,
    ours,
    menu.paths.map(({ path }) => path),
  );
  return { ...ours, remedy, onPlan: readerOnPlan(ours, menu) };
}
