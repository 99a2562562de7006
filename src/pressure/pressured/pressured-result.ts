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
  /** What to plan with: `expected` moved by the part of the shift that held up in backtests. */
  readonly planWith: number;
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
}

/** Everything that came against one number of rushers or one coverage. */
export interface PressuredGroup {
  readonly group: RushGroup | CoverageFaced;
  /** Snaps on which it was charted. */
  readonly snaps: number;
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

/** What they do when pressured. */
export interface PressuredChapter {
  readonly splits: readonly PressuredSplit[];
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
