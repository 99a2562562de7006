import type { CallLibrary } from '../../game/call-library.ts';
import { type Film, joinFilms } from '../../game/film.ts';
import { callRushers, expectedAgainst } from '../fit/against-rush.ts';
import { expectedSnaps } from '../fit/expected-snaps.ts';
import { givenRules } from '../fit/given-rules.ts';
import { netOf } from '../fit/net-where.ts';
import { ruleTable } from '../fit/rule-table.ts';
import { snapFeatures } from '../fit/snap-features.ts';
import { expectedMean, readFilm, theoryReader } from '../fit/theory.ts';
import { readyRules, rulesOf } from '../fit/verdict.ts';
import type { ForecastChapter } from '../forecast/forecast-result.ts';
import type { WeekPlan } from '../plan/week-plan.ts';
import type { LiveForecast } from './live-forecast.ts';
import type { CallNet } from './rank-by-fit.ts';

/** What the fit of tonight is worked out from. */
export interface HalftimeFitInput {
  readonly plan: WeekPlan;
  /** The film behind Sunday's plan; null where only the plan is at hand. */
  readonly film: Film | null;
  readonly live: Film;
  readonly forecasts: readonly LiveForecast[];
}

/**
 * Right less wrong of the carried calls with tonight's snaps among the film and tonight's forecast of the answers, by
 * Sunday's rules. Null where the film is not at hand, the plan has no menu, tonight counts for nothing or no
 * snap came: then Sunday's fit stands.
 */
export function halftimeFit({ plan, film, live, forecasts }: HalftimeFitInput): readonly CallNet[] | null {
  const { library, menu, settings } = plan;
  if (film === null || !library || menu?.kind !== 'menu') return null;
  if (settings.live_discount === 0 || live.size === 0) return null;
  const carried = new Set(menu.calls.map(({ call }) => call));
  const only = { ...library, calls: library.calls.filter(({ name }) => carried.has(name)) };
  return callNets(plan, only, { chart: joinFilms([film, live]), forecast: withFirstHalf(plan.forecast, forecasts) });
}

interface FilmNow {
  readonly chart: Film;
  readonly forecast: ForecastChapter;
}

function callNets({ settings, pressured }: WeekPlan, library: CallLibrary, { chart, forecast }: FilmNow): CallNet[] {
  const cuts = settings.situations;
  const rules = readyRules(ruleTable(library.rules));
  const theoryOf = theoryReader(readFilm(snapFeatures(chart, cuts), chart.size));
  const situations = expectedSnaps({ chart, forecast, cuts });
  const against = expectedAgainst({ situations, forecasts: forecast.forecasts, pressured });
  return library.calls.flatMap((call) => {
    const theory = theoryOf([...rulesOf(call.family, rules), ...readyRules(givenRules(call))]);
    return against(callRushers(call)).map((expected) => ({
      call: call.name,
      situation: expected.situation,
      net: { mean: expectedMean(theory, expected, netOf) },
    }));
  });
}

/** Sunday's forecast with the shares and weights of tonight. */
function withFirstHalf(chapter: ForecastChapter, live: readonly LiveForecast[]): ForecastChapter {
  const forecasts = chapter.forecasts.map((forecast) => {
    const now = live.find(({ target, situation }) => target === forecast.target && situation === forecast.situation);
    const classes = forecast.classes.map((entry) => {
      const found = now?.classes.find(({ name }) => name === entry.name);
      return found ? { ...entry, share: found.share, low: found.low, high: found.high, alpha: found.alpha } : entry;
    });
    return { ...forecast, classes };
  });
  return { ...chapter, forecasts };
}
