import { NOT_KNOWN } from '../../snap/not-known.ts';
import { type TargetCodes, tallyGame } from '../chain-tally.ts';
import type { ChainKind } from '../forecast-film.ts';
import type { BacktestFilm, BacktestGame } from './backtest-film.ts';
import type { ArchiveTally } from './window-film.ts';

type Counted = ReturnType<ArchiveTally>;

/**
 * Counts archives in the cells of a chain. All windows of one offense share one archive, and it holds none of the
 * offense's games, so each is counted once.
 */
export function archiveTallies(film: BacktestFilm, target: TargetCodes): ArchiveTally {
  const known = new Map<readonly BacktestGame[], Map<ChainKind, Counted>>();
  return (kind, { archive }) => {
    const counted = known.get(archive) ?? new Map<ChainKind, Counted>();
    known.set(archive, counted);
    if (!counted.has(kind)) counted.set(kind, countArchive(film, target, archive)(kind));
    return counted.get(kind) ?? null;
  };
}

function countArchive(film: BacktestFilm, target: TargetCodes, archive: readonly BacktestGame[]) {
  const charted = archive.filter(({ rows }) => rows.some((row) => target.codes[row] !== NOT_KNOWN));
  const offenses = new Set(charted.map(({ offense }) => offense)).size;
  const rows = charted.flatMap((game) => game.rows);
  return (kind: ChainKind): Counted =>
    offenses === 0 ? null : { tally: tallyGame(film.trees[kind], target, rows), offenses };
}
