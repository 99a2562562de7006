import { type Film, selectSnaps } from '../../../game/film.ts';
import type { SituationCuts } from '../../../game/week-settings.ts';
import { classifiedAnswers } from '../../snap/classified-answers.ts';
import { NOT_KNOWN } from '../../snap/not-known.ts';
import { type OffenseGame, offenseGames } from '../../snap/offense-game.ts';
import { runOrPassCodes } from '../../snap/run-or-pass.ts';
import { type SnapCells, snapCells } from '../../snap/snap-cells.ts';
import type { TargetCodes } from '../chain-tally.ts';
import type { ChainTree } from '../chain-tree.ts';
import { type ChainKind, filmTrees } from '../forecast-film.ts';
import type { TargetDefinition } from '../target.ts';
import { withoutOutcome } from './without-outcome.ts';

/** A game of one offense in one season. */
export interface BacktestGame extends OffenseGame {
  /** Number of the season in time; 0 where seasons are not separated. */
  readonly season: number;
}

/** The film of all offenses as one set of snaps. */
export interface BacktestFilm {
  readonly chart: Film;
  readonly cuts: SituationCuts;
  readonly cells: SnapCells;
  readonly trees: Readonly<Record<ChainKind, ChainTree>>;
  /** Places of the levels of the line's tree among all that a line's chain may have. */
  readonly linePlaces: readonly number[];
  /** In order of season, week and appearance. */
  readonly games: readonly BacktestGame[];
}

/**
 * Reads charts for a backtest.
 *
 * @param chart - snaps of one or many offenses
 * @param seasons - the season of each source of the chart; absent where no season is given
 */
export function backtestFilm(chart: Film, cuts: SituationCuts, seasons?: readonly number[]): BacktestFilm {
  const cells = snapCells(chart, cuts);
  return {
    chart,
    cuts,
    cells,
    ...filmTrees(cells, cells.size),
    games: seasonGames(chart, seasons),
  };
}

/** The class of every snap as charted, without the answers of games that do not tell their passes apart. */
export function chartedCodes({ chart, cuts, games }: BacktestFilm, definition: TargetDefinition): TargetCodes {
  const charted = definition.codes(chart, cuts);
  const codes = definition.target === 'answer' ? classifiedAnswers(charted, runOrPassCodes(chart), games) : charted;
  return { codes, classes: definition.classes.length };
}

/**
 * The class of every snap as it would be read had nothing of the game's outcomes been charted: its own snaps are not
 * known, and where a file's words decide how its other snaps are read, those are read again.
 *
 * @param charted - the target's {@link chartedCodes}
 */
export function codesWithoutGame(
  film: BacktestFilm,
  { definition, charted }: { readonly definition: TargetDefinition; readonly charted: TargetCodes },
  game: BacktestGame,
): TargetCodes {
  if (definition.readByFile) {
    return { ...charted, codes: definition.codes(withoutOutcome(film.chart, game.rows), film.cuts) };
  }
  const codes = charted.codes.slice();
  for (const row of game.rows) codes[row] = NOT_KNOWN;
  return { ...charted, codes };
}

function seasonGames(chart: Film, seasons: readonly number[] | undefined): readonly BacktestGame[] {
  if (seasons === undefined) return offenseGames(chart).map((game) => ({ ...game, season: 0 }));
  const inOrder = [...new Set(seasons)].sort((a, b) => a - b);
  return inOrder.flatMap((season) => {
    const rows = Array.from({ length: chart.size }, (_, row) => row).filter(
      (row) => seasons[chart.sourceOf[row] as number] === season,
    );
    return offenseGames(selectSnaps(chart, rows)).map((game) => ({
      ...game,
      season,
      rows: game.rows.map((at) => rows[at] as number),
    }));
  });
}

/** The second of two games that one offense has in one week and season: a sign that seasons are mixed up. */
export function sameWeekTwice(games: readonly BacktestGame[]): readonly BacktestGame[] {
  const seen = new Set<string>();
  return games.filter(({ offense, season, week }) => {
    if (!Number.isFinite(week)) return false;
    const key = JSON.stringify([season, week, offense]);
    const twice = seen.has(key);
    seen.add(key);
    return twice;
  });
}
