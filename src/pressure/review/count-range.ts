import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { betaBinomialInterval, betaBinomialPmf } from '../../stats/beta-binomial.ts';
import type { Forecast, ForecastChapter, Target } from '../forecast/forecast-result.ts';
import { type LiveTally, liveTallies, liveTotals } from '../halftime/live-tally.ts';
import { concentrationOf, LEAST_SNAPS } from '../halftime/moved.ts';

/** A range of counts, whether the count fell into it, and how often it should by the forecast's own reckoning. */
export interface CountRange {
  readonly low: number;
  readonly high: number;
  readonly hit: boolean;
  /** Chance of a hit if the forecast is right, 0 to 1: whole numbers make it more than the level asked for. */
  readonly chance: number;
}

/** A count that came, against the ranges Sunday's forecast gave for that many snaps. */
export interface CountCheck {
  readonly target: Target;
  /** Situation id, or `all`. */
  readonly situation: string;
  readonly name: string;
  readonly snaps: number;
  readonly came: number;
  /** Share Sunday expected, 0 to 1. */
  readonly expected: number;
  /** The 95% range of Sunday's page. */
  readonly outer: CountRange;
  /** The central half: with it, ranges that are too wide show. */
  readonly inner: CountRange;
}

/** Level of the outer ranges, the same as on Sunday's page, and of the inner ones. */
export const RANGE_LEVELS = { outer: 0.95, inner: 0.5 } as const;

/**
 * Checks the ranges of every count in the game: all snaps and each situation, from five snaps on, game-to-game spread
 * included. The number of snaps is taken as it came; the forecast speaks of the share among them. Of two classes only
 * the first is checked: the other is the same count.
 */
export function checkCounts(chapter: ForecastChapter, game: Film, cuts: SituationCuts): readonly CountCheck[] {
  const tallies = liveTallies(game, cuts);
  return chapter.forecasts.flatMap((forecast) => {
    const tally = tallies.find(({ target }) => target === forecast.target);
    const counts = tally ? countsIn(tally, forecast) : [];
    const snaps = counts.reduce((sum, count) => sum + count, 0);
    if (snaps < LEAST_SNAPS) return [];
    const concentration = concentrationOf(chapter, forecast);
    const shown = forecast.classes.length === 2 ? forecast.classes.slice(0, 1) : forecast.classes;
    return shown.map(({ name, share }, k) => {
      const { target, situation } = forecast;
      const came = counts[k] as number;
      const expected = Math.min(1, Math.max(0, share));
      const ranges = rangesOf({ trials: snaps, mean: expected, concentration }, came);
      return { target, situation, name, snaps, came, expected, ...ranges };
    });
  });
}

function countsIn(tally: LiveTally, forecast: Forecast): readonly number[] {
  return forecast.situation === 'all' ? liveTotals(tally) : (tally.bySituation.get(forecast.situation) ?? []);
}

interface ForecastCount {
  readonly trials: number;
  readonly mean: number;
  readonly concentration: number;
}

function rangesOf(count: ForecastCount, came: number): { readonly outer: CountRange; readonly inner: CountRange } {
  const pmf = betaBinomialPmf(count);
  const at = (level: number): CountRange => {
    const { low, high } = betaBinomialInterval({ ...count, level });
    const chance = pmf.slice(low, high + 1).reduce((sum, p) => sum + p, 0);
    return { low, high, hit: came >= low && came <= high, chance: Math.min(1, chance) };
  };
  return { outer: at(RANGE_LEVELS.outer), inner: at(RANGE_LEVELS.inner) };
}
