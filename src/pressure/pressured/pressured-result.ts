import type { CoverageFaced } from '../../game/vocabulary.ts';
import type { Share } from '../../stats/share.ts';
import type { AgainstOthers } from '../others/against-others.ts';
import type { GameCount } from '../others/cross-count.ts';
import type { Sure } from '../others/sure.ts';
import type { RushGroup } from '../snap/rush-group.ts';

/**
 * What is asked of them when pressured. `run_or_pass`: of all snaps, where the rush was charted on runs too.
 * `pass_answer`: which pass, where passes were separated. `screen`: of passes. `quick_release`: of timed throws, out
 * within 2.5 seconds. `result`: how a pass ended for them.
 */
export const PRESSURED_TARGETS = ['run_or_pass', 'pass_answer', 'screen', 'quick_release', 'result'] as const;
/** One word of {@link PRESSURED_TARGETS}. */
export type PressuredTarget = (typeof PRESSURED_TARGETS)[number];

/** How often one thing came against one number of rushers or one coverage. */
export interface PressuredShare {
  readonly target: PressuredTarget;
  /** The class: `run`, `screen`, `within`, `loss` ... */
  readonly name: string;
  /** Count, denominator and Wilson interval on film. */
  readonly film: Share;
  /** What is due on these very snaps whatever they face: the forecast's pattern by down and distance at their own level. */
  readonly expected: number;
  /** Film shrunk toward `expected` and what all offenses do against it: their own long-run share, with its 95% interval. */
  readonly shrunk: number;
  readonly low: number;
  readonly high: number;
  /** What to plan with: `expected` moved by the part of the shift that held up in backtests. */
  readonly planWith: number;
  /** Weight of their own snaps of the group in `shrunk`, 0 to 1; learned from their film. */
  readonly ownWeight: number;
  /** Chance of a count at least this far from `expected`, both sides, with snaps clustered by game. */
  readonly p: number;
  /** The same after correcting for everything looked at in this chapter (Benjamini-Hochberg). */
  readonly adjusted: number;
  /** How sure it is that they change against it, by `adjusted`. */
  readonly sure: Sure;
  readonly games: readonly GameCount[];
  /** The archive's offenses against the same; null without an archive that charted it. */
  readonly others: AgainstOthers | null;
  /** Indices into the opponent chart of the snaps in the denominator. */
  readonly snaps: readonly number[];
}

/** How fast the ball is out, in seconds from the snap; sacks and scrambles have no time and are not in it. */
export interface PressuredRelease {
  readonly timed: number;
  /** Mean of the timed throws; null when none was timed. */
  readonly mean: number | null;
  /** The mean shrunk toward their own over all throws, with its 95% interval; null when none of their throws was timed. */
  readonly shrunk: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

/** Everything that came against one number of rushers or one coverage. */
export interface PressuredGroup {
  readonly group: RushGroup | CoverageFaced;
  /** Snaps on which it was charted, and passes among them. */
  readonly snaps: number;
  readonly passes: number;
  readonly shares: readonly PressuredShare[];
  readonly release: PressuredRelease;
}

/** Their snaps by what they faced. Only what they have faced is listed. */
export interface PressuredSplit {
  readonly by: 'rushers' | 'coverage';
  /** Snaps on which it was charted, of all. */
  readonly charted: number;
  readonly snaps: number;
  /** False where it was charted on too few runs: then nothing is said of runs, and shares are of passes. */
  readonly runsCharted: boolean;
  readonly groups: readonly PressuredGroup[];
}

/** Whether knowing the rush or the coverage forecasts the next game better, and what of it is planned with. */
export interface PressuredBacktest {
  readonly by: PressuredSplit['by'];
  readonly target: PressuredTarget;
  /** Part of the shift that all offenses show which is planned with, 0 to 1. */
  readonly leagueKept: number;
  /** Whether what this offense itself showed counts too, as far as its film says so. */
  readonly ownCounts: boolean;
  /**
   * Mean log loss a snap of the next game less that of the forecast without it (minus is better), its standard error with
   * the offense as the unit, and in how many of 32 offenses it was better; null where no open data tell.
   */
  readonly measured: { readonly less: number; readonly error: number; readonly better: number } | null;
}

/** What they do when pressured. */
export interface PressuredChapter {
  readonly splits: readonly PressuredSplit[];
  /** Comparisons the correction was made over. */
  readonly looked: number;
  /** By split and target: what held up in backtests, and so is planned with. */
  readonly backtest: readonly PressuredBacktest[];
  /** What answers are multiplied by when we send a rush or play a coverage; for `answersToPressure`. */
  readonly factors: readonly PressuredFactor[];
}

/** What the share of an answer in the forecast is multiplied by against one group; 1 is no change. */
export interface PressuredFactor {
  readonly by: PressuredSplit['by'];
  readonly group: RushGroup | CoverageFaced;
  readonly target: PressuredTarget;
  readonly name: string;
  readonly factor: number;
}
