import type { ShiftBelief } from './group-shares.ts';
import type { PressuredSplit, PressuredTarget } from './pressured-result.ts';

const UNTESTED: ShiftBelief = { leagueKept: 0, ownCounts: false };

/**
 * What is planned with. A shift counts where it forecast the next game better by more than twice its error: open
 * professional play data of 2022, 414 windows of four games to the next, archive of the other offenses (play-by-play
 * nflverse, CC BY 4.0; charting FTN Data and participation NFL NextGenStats via nflverse, CC BY-SA 4.0);
 * `bench/pressured.ts` prints them. Beside each: mean log loss a snap of the next game less that of the forecast without
 * the split, its standard error with the offense as the unit, and in how many of 32 offenses it was better. Rushers and
 * coverage are not charted on runs there, so that run or pass is not tested and not moved.
 */
export const KEPT: Readonly<Record<PressuredSplit['by'], Readonly<Record<PressuredTarget, ShiftBelief>>>> = {
  rushers: {
    run_or_pass: UNTESTED,
    pass_answer: { leagueKept: 1, ownCounts: true }, // -0.0029 (0.0008), 27
    screen: { leagueKept: 0, ownCounts: false }, // -0.0002 (0.0002), 18
    quick_release: { leagueKept: 1, ownCounts: true }, // -0.0022 (0.0008), 21
    result: { leagueKept: 0, ownCounts: false }, // -0.0001 (0.0003), 19
  },
  coverage: {
    run_or_pass: UNTESTED,
    pass_answer: { leagueKept: 1, ownCounts: true }, // -0.0069 (0.0012), 28
    screen: { leagueKept: 1, ownCounts: true }, // -0.0017 (0.0005), 26
    quick_release: { leagueKept: 1, ownCounts: true }, // -0.0027 (0.0008), 23
    result: { leagueKept: 0.5, ownCounts: true }, // -0.0023 (0.0004), 26
  },
};
