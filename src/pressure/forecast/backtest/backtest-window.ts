import { groupBy } from '../../../game/by-word.ts';
import type { BacktestGame } from './backtest-film.ts';

/** A game to be forecast, and the games it may be forecast from. */
export interface BacktestWindow {
  readonly test: BacktestGame;
  /** Games of the same offense. */
  readonly own: readonly BacktestGame[];
  /** Games of other offenses. */
  readonly archive: readonly BacktestGame[];
  /** How the own games were chosen: those before it, or all others where the offense has fewer than five. */
  readonly kind: 'games_before' | 'left_one_out';
}

/** Which games are forecast from which. */
export interface WindowRule {
  /** Previous games to forecast from. */
  readonly trainOn: number | 'all';
  /** `others`: every game of other offenses; `earlier_seasons`: only those of seasons before the game's. */
  readonly archive: 'others' | 'earlier_seasons';
  /** Offenses with games to forecast; the rest are archive only. Absent: all. */
  readonly offenses?: ReadonlySet<string> | undefined;
}

/** The first game that is forecast from the ones before it: four games are what a staff usually has. */
const FIRST_FORECAST = 5;

/**
 * Every game that can be forecast: of each offense and season the fifth game on, each from the games before it; of an
 * offense with two to four games each one, from its others. A single game gives no window.
 *
 * @param games - in order of time
 */
export function backtestWindows(games: readonly BacktestGame[], rule: WindowRule): readonly BacktestWindow[] {
  return byOffense(games)
    .filter(([first]) => first && (rule.offenses?.has(first.offense) ?? true))
    .flatMap((own) => offenseWindows(own, archiveOf(games, own, rule), rule));
}

/** The games of each offense in each season, in order of first appearance. */
export function byOffense(games: readonly BacktestGame[]): readonly (readonly BacktestGame[])[] {
  return [...groupBy(games, ({ season, offense }) => JSON.stringify([season, offense])).values()];
}

function archiveOf(
  games: readonly BacktestGame[],
  [first]: readonly BacktestGame[],
  { archive }: WindowRule,
): readonly BacktestGame[] {
  if (!first) return [];
  return games.filter(
    ({ offense, season }) => offense !== first.offense && (archive === 'others' || season < first.season),
  );
}

function offenseWindows(
  own: readonly BacktestGame[],
  archive: readonly BacktestGame[],
  { trainOn }: WindowRule,
): BacktestWindow[] {
  if (own.length < 2) return [];
  if (own.length < FIRST_FORECAST) {
    return own.map((test) => ({ test, own: own.filter((game) => game !== test), archive, kind: 'left_one_out' }));
  }
  return own.slice(FIRST_FORECAST - 1).map((test, i) => {
    const before = own.slice(0, FIRST_FORECAST - 1 + i);
    return { test, own: trainOn === 'all' ? before : before.slice(-trainOn), archive, kind: 'games_before' };
  });
}
