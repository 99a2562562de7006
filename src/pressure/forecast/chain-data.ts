import type { ChainFit } from './chain-fit.ts';
import type { ChainTally } from './chain-tally.ts';
import type { ChainTree } from './chain-tree.ts';
import type { LeagueWorth } from './league-worth.ts';

/** The constants of a chain for one target. */
export interface ChainStrengths {
  /**
   * Snaps the cell above is worth where an offense's film stands alone, one per level. The first is only the middle of
   * what is believed before the film: the film itself teaches how much its first cells differ.
   */
  readonly own: readonly number[];
  /** The first level's strength is taken as it is. */
  readonly fixed?: true;
  /** Snaps one game is worth as evidence of the next: the smaller, the more an offense changes from game to game. */
  readonly gameToGame: number;
  /** Most snaps the rest of the archive is worth as evidence of this offense's long-run share, for intervals only. */
  readonly offenseToOffense: number;
  /**
   * Most snaps the cell above is worth as evidence of a cell's long-run share, for intervals only: a mean may be pooled
   * because four games cannot tell cells apart, and the cells differ all the same. Absent: as many as the strengths say.
   */
  readonly cellToCell?: number;
}

/** Film of other offenses behind a chain. */
export interface ChainArchive {
  readonly tally: ChainTally;
  readonly offenses: number;
  /** What it teaches of how much offenses differ; absent where nobody looked. */
  readonly worth?: LeagueWorth;
}

/** What a chain is fitted to. */
export interface ChainData {
  readonly tree: ChainTree;
  /** The offense's own games. */
  readonly own: ChainTally;
  /** The games of other offenses; null without an archive. */
  readonly archive: ChainArchive | null;
  readonly strengths: ChainStrengths;
  /** The cells to fit, every one after its parent, with all that hold own snaps among them; all when absent. */
  readonly nodes?: Int32Array;
  /** Levels the offense's own snaps speak for; below, a cell is what the archive says of it. All when absent. */
  readonly ownLevels?: number;
  /** The chain of this archive alone, where it is known already. */
  readonly base?: ChainFit;
}
