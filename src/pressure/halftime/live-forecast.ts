import { betaQuantile } from '../../stats/beta.ts';
import { type Share, share } from '../../stats/share.ts';
import type { Forecast, ForecastChapter, Target } from '../forecast/forecast-result.ts';
import { type LiveTally, liveTotals } from './live-tally.ts';

/** One class after tonight's snaps. */
export interface LiveClass {
  readonly name: string;
  /** Share of Sunday's forecast. */
  readonly before: number;
  /** Share now, with its 95% interval. */
  readonly share: number;
  readonly low: number;
  readonly high: number;
  readonly alpha: number;
  /** What was seen tonight in this situation. */
  readonly firstHalf: Share;
}

/** Sunday's forecast of a target in a situation, brought up to date. */
export interface LiveForecast {
  readonly target: Target;
  /** Situation id, or `all`. */
  readonly situation: string;
  readonly classes: readonly LiveClass[];
}

/**
 * Brings Sunday's forecast up to date with tonight's snaps, each worth `discount` of a snap on film. A situation takes
 * its own snaps as pseudo-counts; snaps of the other situations shift it by the ratio of what was seen there to what
 * Sunday's forecast expected there, held back by all of Sunday's film. A discount of 0 leaves Sunday's forecast as it is.
 *
 * @param discount - 0 to 1
 * @returns one entry for every forecast of the chapter, in its order
 */
export function liveForecasts(
  chapter: ForecastChapter,
  tallies: readonly LiveTally[],
  discount: number,
): readonly LiveForecast[] {
  return chapter.forecasts.map((forecast) => {
    const tally = tallies.find(({ target }) => target === forecast.target);
    const counts = tally ? countsFor(tally, forecast) : forecast.classes.map(() => 0);
    if (!tally || discount === 0 || tally.bySituation.size === 0) return unchanged(forecast, counts);
    const others = forecast.situation === 'all' ? null : shiftOf(chapter, { tally, discount }, forecast);
    return updated(forecast, counts, { discount, shift: others ?? [], alphas: pseudoCounts(chapter, forecast) });
  });
}

/** Snaps tonight of the forecast's situation, by class. */
function countsFor(tally: LiveTally, forecast: Forecast): readonly number[] {
  if (forecast.situation === 'all') return liveTotals(tally);
  return tally.bySituation.get(forecast.situation) ?? forecast.classes.map(() => 0);
}

interface Evidence {
  readonly tally: LiveTally;
  readonly discount: number;
}

/** By class: seen over expected in every other situation tonight, pulled to 1 by Sunday's pseudo-counts of all snaps. */
function shiftOf(chapter: ForecastChapter, { tally, discount }: Evidence, forecast: Forecast): number[] {
  const all = chapter.forecasts.find(({ target, situation }) => target === forecast.target && situation === 'all');
  const held = all ? pseudoCounts(chapter, all) : forecast.classes.map(() => Number.POSITIVE_INFINITY);
  const elsewhere = [...tally.bySituation].filter(([situation]) => situation !== forecast.situation);
  const parts = elsewhere.map(([situation, counts]) => {
    const snaps = counts.reduce((sum, count) => sum + count, 0);
    const expected = sundayShares(chapter, forecast.target, situation).map((usual) => snaps * usual);
    return { seen: counts, expected };
  });
  return held.map((before, k) => {
    const over = (what: 'seen' | 'expected') => parts.reduce((sum, part) => sum + (part[what][k] as number), 0);
    const base = before + discount * over('expected');
    return base > 0 && Number.isFinite(base) ? (before + discount * over('seen')) / base : 1;
  });
}

/** Sunday's shares of a target in a situation; of all snaps where that situation has no forecast. */
export function sundayShares(chapter: ForecastChapter, target: Target, situation: string): readonly number[] {
  const asked = chapter.forecasts.filter((forecast) => forecast.target === target);
  const found =
    asked.find((entry) => entry.situation === situation) ?? asked.find((entry) => entry.situation === 'all');
  return found?.classes.map(({ share: part }) => part) ?? [];
}

/** Pseudo-counts of a forecast; one that is pooled with all snaps carries the weight of all snaps. */
export function pseudoCounts(chapter: ForecastChapter, forecast: Forecast): readonly number[] {
  if (forecast.classes.every(({ alpha }) => Number.isFinite(alpha))) return forecast.classes.map(({ alpha }) => alpha);
  const all = chapter.forecasts.find(({ target, situation }) => target === forecast.target && situation === 'all');
  const worth = all?.classes.reduce((sum, { alpha }) => sum + alpha, 0) ?? 0;
  return forecast.classes.map(({ share: part }) => part * (Number.isFinite(worth) && worth > 0 ? worth : POOLED_WORTH));
}

/** Weight of a share of unknown weight, in snaps; judgment: two games. */
const POOLED_WORTH = 120;

interface Update {
  readonly discount: number;
  /** By class; a class without an entry is not shifted. */
  readonly shift: readonly number[];
  readonly alphas: readonly number[];
}

function updated(forecast: Forecast, counts: readonly number[], update: Update): LiveForecast {
  const { discount, shift } = update;
  const worth = update.alphas.reduce((sum, alpha) => sum + alpha, 0);
  const moved = update.alphas.map((alpha, k) => alpha * (shift[k] ?? 1));
  const scale = worth / moved.reduce((sum, value) => sum + value, 0);
  const still = shift.every((ratio) => ratio === 1);
  const after = moved.map((value, k) => (still ? value : value * scale) + discount * (counts[k] as number));
  const total = after.reduce((sum, value) => sum + value, 0);
  const classes = forecast.classes.map((entry, k) => {
    const alpha = after[k] as number;
    const [low, high] = interval(alpha, total - alpha);
    return {
      name: entry.name,
      before: entry.share,
      share: alpha / total,
      low,
      high,
      alpha,
      firstHalf: seenIn(counts, k),
    };
  });
  return { target: forecast.target, situation: forecast.situation, classes };
}

function unchanged(forecast: Forecast, counts: readonly number[]): LiveForecast {
  const classes = forecast.classes.map(({ name, share: part, low, high, alpha }, k) => {
    return { name, before: part, share: part, low, high, alpha, firstHalf: seenIn(counts, k) };
  });
  return { target: forecast.target, situation: forecast.situation, classes };
}

function seenIn(counts: readonly number[], k: number): Share {
  return share(
    counts[k] as number,
    counts.reduce((sum, count) => sum + count, 0),
  );
}

/** Central 95% of a Beta; a class without any pseudo-count is known not to come. */
function interval(alpha: number, rest: number): readonly [number, number] {
  if (alpha <= 0) return [0, 0];
  if (rest <= 0) return [1, 1];
  return [betaQuantile(0.025, alpha, rest), betaQuantile(0.975, alpha, rest)];
}
