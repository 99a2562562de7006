import type { Film } from '../../game/film.ts';
import { joinFilms } from '../../game/film.ts';
import { fitChapter } from '../fit/fit-chapter.ts';
import type { CallFit } from '../fit/fit-result.ts';
import type { ForecastChapter } from '../forecast/forecast-result.ts';
import type { WeekPlan } from '../plan/week-plan.ts';
import type { LiveForecast } from './live-forecast.ts';

/** What the fit of tonight is worked out from. */
export interface FitTonightInput {
  readonly plan: WeekPlan;
  /** The film behind Sunday's plan; null where only the plan is at hand. */
  readonly film: Film | null;
  readonly live: Film;
  readonly forecasts: readonly LiveForecast[];
}

/**
 * Our calls' fit with tonight's snaps among the film and tonight's forecast of the answers, by Sunday's rules. Null where
 * the film is not at hand, the plan has no fit, tonight counts for nothing or no snap came: then Sunday's fit stands.
 */
export function fitTonight({ plan, film, live, forecasts }: FitTonightInput): readonly CallFit[] | null {
  const { fit, library, pressured, settings, seed } = plan;
  if (film === null || !fit || !library || settings.live_discount === 0 || live.size === 0) return null;
  return fitChapter({
    chart: joinFilms([film, live]),
    forecast: withTonight(plan.forecast, forecasts),
    cuts: settings.situations,
    library,
    pressured,
    seed,
  }).calls;
}

/** Sunday's forecast with the shares and weights of tonight. */
function withTonight(chapter: ForecastChapter, live: readonly LiveForecast[]): ForecastChapter {
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
