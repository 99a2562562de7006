import { fitChain } from '../chain.ts';
import type { ChainArchive } from '../chain-data.ts';
import type { ChainFit } from '../chain-fit.ts';
import { type ChainTally, sumTallies, type TargetCodes, tallyGame } from '../chain-tally.ts';
import type { ChainTree } from '../chain-tree.ts';
import type { ChainKind } from '../forecast-film.ts';
import { splitByRunOrPass } from '../split-by-run-or-pass.ts';
import type { TargetDefinition } from '../target.ts';
import { lineStrengths, TARGET_STRENGTHS } from '../target-strengths.ts';
import type { BacktestFilm, BacktestGame } from './backtest-film.ts';
import type { BacktestWindow } from './backtest-window.ts';

/** All that a way to forecast may know of a game to come: outcomes of the other games, and what is seen before a snap. */
export interface WindowFilm {
  readonly film: BacktestFilm;
  readonly window: BacktestWindow;
  readonly definition: TargetDefinition;
  /** Classes of all snaps; 255 on every snap of the game to be forecast. */
  readonly target: TargetCodes;
  /** The own games, counted in the cells of a chain. */
  readonly own: (kind: ChainKind) => ChainTally;
  /** The archive's, or null where no other offense charted the target. */
  readonly archive: (kind: ChainKind) => ChainArchive | null;
  /** The chain fitted, with or without the archive; null where there is none to fit it with. */
  readonly chain: (kind: ChainKind, from: 'own' | 'archive') => ChainFit | null;
}

/** The games of other offenses counted in the cells of a chain; null where none charted the target. */
export type ArchiveTally = (kind: ChainKind, window: BacktestWindow) => ChainArchive | null;

/** What a window's film is made from. */
export interface WindowTask {
  readonly film: BacktestFilm;
  readonly window: BacktestWindow;
  readonly definition: TargetDefinition;
  readonly target: TargetCodes;
  readonly archive: ArchiveTally;
  /** The same window for run or pass, where the target has runs and passes among its classes. */
  readonly runOrPass?: WindowFilm;
}

/** The film of a window, each of its parts worked out when first asked for and kept. */
export function windowFilm({ film, window, definition, target: codes, archive, runOrPass }: WindowTask): WindowFilm {
  const own = kept((kind: ChainKind) => tallyOwn(film.trees[kind], codes, window.own));
  const base = kept((kind: ChainKind) => archive(kind, window));
  const fitOf = (kind: ChainKind, from: 'own' | 'archive') => {
    const { target } = definition;
    const strengths = kind === 'plan' ? TARGET_STRENGTHS[target].plan : lineStrengths(target, film.linePlaces);
    const other = from === 'own' ? null : base(kind);
    if (from === 'archive' && other === null) return null;
    const fit = fitChain({ tree: film.trees[kind], own: own(kind), archive: other, strengths });
    const split = runOrPass?.chain(kind, from);
    return split ? splitByRunOrPass(fit, split, definition) : fit;
  };
  const fits = { own: kept((kind) => fitOf(kind, 'own')), archive: kept((kind) => fitOf(kind, 'archive')) };
  return { film, window, definition, target: codes, own, archive: base, chain: (kind, from) => fits[from](kind) };
}

function tallyOwn(tree: ChainTree, target: TargetCodes, games: readonly BacktestGame[]): ChainTally {
  return sumTallies(
    tree,
    target.classes,
    games.map(({ rows }) => tallyGame(tree, target, rows)),
  );
}

function kept<Value>(make: (kind: ChainKind) => Value): (kind: ChainKind) => Value {
  const known = new Map<ChainKind, Value>();
  return (kind) => {
    if (!known.has(kind)) known.set(kind, make(kind));
    return known.get(kind) as Value;
  };
}
