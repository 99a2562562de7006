import type { ShiftBelief } from './group-shares.ts';
import type { PressuredSplit, PressuredTarget } from './pressured-result.ts';

/** What a backtest said of one question and one split, and what follows for planning. */
export interface MeasuredShift extends ShiftBelief {
  /**
   * Mean log loss a snap of the next game less that of the forecast without the split (minus is better), its standard
   * error with the offense as the unit, and in how many of 32 offenses it was better; null where no open data tell.
   */
  readonly measured: { readonly less: number; readonly error: number; readonly better: number } | null;
}

const UNTESTED: MeasuredShift = { leagueKept: 0, ownCounts: false, measured: null };

/**
 * What is planned with. A shift counts where it forecast the next game better by more than twice its error: open professional play
 * data of 2022, 414 windows of four games to the next, archive of the other offenses (play-by-play nflverse, CC BY 4.0;
 * charting FTN Data and participation NFL NextGenStats via nflverse, CC BY-SA 4.0); `bench/pressured.ts` prints them.
 * Rushers and coverage are not charted on runs there, so that run or pass is not tested and not moved.
 */
export const KEPT: Readonly<Record<PressuredSplit['by'], Readonly<Record<PressuredTarget, MeasuredShift>>>> = {
  rushers: {
    run_or_pass: UNTESTED,
    pass_answer: { leagueKept: 1, ownCounts: true, measured: { less: -0.0029, error: 0.0008, better: 27 } },
    screen: { leagueKept: 0, ownCounts: false, measured: { less: -0.0002, error: 0.0002, better: 18 } },
    quick_release: { leagueKept: 1, ownCounts: true, measured: { less: -0.0022, error: 0.0008, better: 21 } },
    result: { leagueKept: 0, ownCounts: false, measured: { less: -0.0001, error: 0.0003, better: 19 } },
  },
  coverage: {
    run_or_pass: UNTESTED,
    pass_answer: { leagueKept: 1, ownCounts: true, measured: { less: -0.0069, error: 0.0012, better: 28 } },
    screen: { leagueKept: 1, ownCounts: true, measured: { less: -0.0017, error: 0.0005, better: 26 } },
    quick_release: { leagueKept: 1, ownCounts: true, measured: { less: -0.0027, error: 0.0008, better: 23 } },
    result: { leagueKept: 0.5, ownCounts: true, measured: { less: -0.0023, error: 0.0004, better: 26 } },
  },
};

/** What is shown as their long-run share: the shift of all offenses in full, their own as far as the film says so. */
export const SHOWN: ShiftBelief = { leagueKept: 1, ownCounts: true };
