import { NOT_KNOWN } from '../../snap/not-known.ts';
import type { ChainArchive } from '../chain-data.ts';
import { type TargetCodes, tallyGame } from '../chain-tally.ts';
import { type ChainKind, rowsByOffense } from '../forecast-film.ts';
import type { Target } from '../forecast-result.ts';
import { countLeague } from '../league-count.ts';
import { leagueWorth } from '../league-worth.ts';
import { TARGET_STRENGTHS } from '../target-strengths.ts';
import type { BacktestFilm, BacktestGame } from './backtest-film.ts';
import type { ArchiveTally } from './window-film.ts';

/**
 * Counts archives in the cells of a chain. All windows of one offense share one archive, and it holds none of the
 * offense's games, so each is counted once.
 */
export function archiveTallies(film: BacktestFilm, name: Target, target: TargetCodes): ArchiveTally {
  const known = new Map<readonly BacktestGame[], (kind: ChainKind) => ChainArchive | null>();
  return (kind, { archive }) => {
    const counted = known.get(archive) ?? countArchive(film, { name, target }, archive);
    known.set(archive, counted);
    return counted(kind);
  };
}

interface NamedTarget {
  readonly name: Target;
  readonly target: TargetCodes;
}

function countArchive(film: BacktestFilm, { name, target }: NamedTarget, archive: readonly BacktestGame[]) {
  const games = archive.filter(({ rows }) => rows.some((row) => target.codes[row] !== NOT_KNOWN));
  if (games.length === 0) return () => null;
  const rowsOf = rowsByOffense(games);
  const { gameToGame } = TARGET_STRENGTHS[name].plan;
  const league = countLeague({ target, situation: film.cells.situation, games, rowsOf });
  const worth = leagueWorth(league, { classes: target.classes, gameToGame });
  const rows = games.flatMap((game) => game.rows);
  const known = new Map<ChainKind, ChainArchive>();
  return (kind: ChainKind): ChainArchive => {
    const found = known.get(kind) ?? { tally: tallyGame(film.trees[kind], target, rows), offenses: rowsOf.size, worth };
    known.set(kind, found);
    return found;
  };
}
