import type { Chart } from '../ingest/chart.ts';
import type { SituationCuts } from '../ingest/week-settings.ts';
import { betaBinomialInterval } from '../stats/beta-binomial.ts';
import { type Share, share } from '../stats/share.ts';
import type { ForecastChapter, Target } from './forecast-result.ts';
import { liveTallies, liveTotals } from './live-tally.ts';
import { concentrationOf, LEAST_SNAPS } from './moved.ts';

/** A count that came, against the range Sunday's forecast gave for that many snaps. */
export interface CountCheck {
  readonly target: Target;
  readonly situation: string;
  readonly name: string;
  readonly snaps: number;
  readonly came: number;
  readonly low: number;
  readonly high: number;
  readonly hit: boolean;
}

/** How many counts fell into their 95% ranges, and every check. */
export interface IntervalReview {
  readonly hits: Share;
  readonly checks: readonly CountCheck[];
}

/** Level of the ranges; the same as on Sunday's page. */
const LEVEL = 0.95;

/**
 * Checks the 95% range of every count in the game: all snaps and each situation, from five snaps on, game-to-game spread
 * included. The number of snaps is taken as it came; the forecast speaks of the share among them.
 */
export function reviewIntervals(chapter: ForecastChapter, game: Chart, cuts: SituationCuts): IntervalReview {
  const tallies = liveTallies(game, cuts);
  const checks = chapter.forecasts.flatMap((forecast) => {
    const tally = tallies.find(({ target }) => target === forecast.target);
    if (!tally) return [];
    const counts = forecast.situation === 'all' ? liveTotals(tally) : (tally.bySituation.get(forecast.situation) ?? []);
    const trials = counts.reduce((sum, count) => sum + count, 0);
    if (trials < LEAST_SNAPS) return [];
    const concentration = concentrationOf(chapter, forecast);
    const shown = forecast.classes.length === 2 ? forecast.classes.slice(0, 1) : forecast.classes;
    return shown.map(({ name, share: mean }, k) => {
      const { low, high } = betaBinomialInterval({ trials, mean, concentration, level: LEVEL });
      const came = counts[k] ?? 0;
      const { target, situation } = forecast;
      return { target, situation, name, snaps: trials, came, low, high, hit: came >= low && came <= high };
    });
  });
  return { hits: share(checks.filter(({ hit }) => hit).length, checks.length), checks };
}
