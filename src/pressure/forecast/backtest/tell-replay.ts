import { type Film, selectSnaps } from '../../../game/film.ts';
import { NOT_KNOWN } from '../../snap/not-known.ts';
import { lineLevels } from '../../snap/snap-cells.ts';
import { sharesOnSnap } from '../chain-snap.ts';
import { type FittedTarget, type ForecastFilm, fitTarget, forecastFilm } from '../forecast-film.ts';
import type { Target, Tell } from '../forecast-result.ts';
import { definitionOf } from '../target.ts';
import { isSeen, type TellFeature, tellFeatures } from '../tell-feature.ts';
import { findTells } from '../tells.ts';
import { type BacktestFilm, type BacktestGame, chartedCodes } from './backtest-film.ts';
import type { BacktestWindow } from './backtest-window.ts';

/** A tell found in some games, and what became of it in the game to come. */
export interface ReplayedTell {
  readonly tell: Tell;
  /** The game to come. */
  readonly game: BacktestGame;
  /** Snaps of that game on which it could be seen and its question was charted. */
  readonly trials: number;
  /** How many of them went as the tell says. */
  readonly count: number;
  /** Snaps expected to, by the chain with the look from the games before and the archive. */
  readonly due: number;
}

/**
 * Looks for tells in the games before each game, as the report does, and then for what became of them in it. The game
 * itself is in nothing that finds or expects a tell.
 *
 * @param onStep - called after every game
 */
export function replayTells(
  film: BacktestFilm,
  windows: readonly BacktestWindow[],
  onStep: () => void = () => undefined,
): readonly ReplayedTell[] {
  const read = { film, features: tellFeatures(film.chart, film.cuts), codesOf: codesOnce(film) };
  const archives = new Map<readonly BacktestGame[], Film | null>();
  return windows.flatMap((window) => {
    if (!archives.has(window.archive)) archives.set(window.archive, archiveChart(film, window));
    const found = replayWindow(read, window, archives.get(window.archive) ?? null);
    onStep();
    return found;
  });
}

interface ReadFilm {
  readonly film: BacktestFilm;
  readonly features: readonly TellFeature[];
  readonly codesOf: (target: Target) => Uint8Array;
}

function replayWindow(read: ReadFilm, window: BacktestWindow, archive: Film | null): ReplayedTell[] {
  const { chart, cuts } = read.film;
  const own = selectSnaps(chart, rowsOf(window.own));
  const before = forecastFilm(own, archive, cuts);
  const fits = new Map<Target, FittedTarget>();
  return findTells(before, own, cuts).tells.map((tell) => {
    const fitted = fits.get(tell.target) ?? fitTarget(before, definitionOf(tell.target), 'line');
    fits.set(tell.target, fitted);
    return { tell, game: window.test, ...nextGame(read, window.test, { tell, fitted, before }) };
  });
}

interface ExpectedTell {
  readonly tell: Tell;
  readonly fitted: FittedTarget;
  /** The film it was found in. */
  readonly before: ForecastFilm;
}

function nextGame({ film, features, codesOf }: ReadFilm, test: BacktestGame, { tell, fitted, before }: ExpectedTell) {
  const codes = codesOf(tell.target);
  const rows = test.rows.filter((row) => codes[row] !== NOT_KNOWN && isSeen(features, row, tell.seen));
  const follows = fitted.definition.classes.indexOf(tell.follows);
  const levels = lineLevels(film.cells);
  const path = (row: number) => before.linePlaces.map((place) => levels[place]?.[row] ?? NOT_KNOWN);
  const shareAt = (row: number) => sharesOnSnap(fitted, path(row))[follows] ?? 0;
  return {
    trials: rows.length,
    count: rows.filter((row) => codes[row] === follows).length,
    due: rows.reduce((sum, row) => sum + shareAt(row), 0),
  };
}

function codesOnce(film: BacktestFilm): (target: Target) => Uint8Array {
  const known = new Map<Target, Uint8Array>();
  return (target) => {
    const codes = known.get(target) ?? chartedCodes(film, definitionOf(target)).codes;
    known.set(target, codes);
    return codes;
  };
}

function archiveChart(film: BacktestFilm, { archive }: BacktestWindow): Film | null {
  return archive.length === 0 ? null : selectSnaps(film.chart, rowsOf(archive));
}

function rowsOf(games: readonly BacktestGame[]): number[] {
  return games.flatMap(({ rows }) => rows);
}
