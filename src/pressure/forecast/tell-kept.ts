import type { Target } from './forecast-result.ts';

/** Part of a tell's excess over the forecast to plan with where no open data tell: a third. */
export const EXCESS_KEPT = 1 / 3;

/** With what a tell was expected: their own film alone, or the archive's too. */
export type TellGrounds = 'alone' | 'archive';

/**
 * Part of the excess that tells of a kind kept in the next game, rounded toward what is safe. Open professional play data
 * of 2022, 414 windows of four games to the next (nflverse CC BY 4.0, FTN Data via nflverse CC BY-SA 4.0);
 * `bench/tells.ts` prints them. With the archive run or pass kept .81 over 120 snaps (held 8 of 9), motion .86 over 120
 * (11 of 11). Own film alone, every test counted: run or pass .60 over 238 (16 of 19), motion .87 over 106 (9 of 9), other
 * answers .24 over 49 (4 of 4), screens -.16 over 7. Quick throws gave none.
 */
const KEPT: Readonly<Partial<Record<Target, Readonly<Record<TellGrounds, number>>>>> = {
  run_or_pass: { alone: 1 / 2, archive: 1 / 2 },
  motion: { alone: 2 / 3, archive: 2 / 3 },
  answer: { alone: 1 / 4, archive: 0 },
  screen: { alone: 0, archive: 0 },
};

/** Part of the excess of a target's tells to plan with. */
export function excessKept(target: Target, grounds: TellGrounds): number {
  return KEPT[target]?.[grounds] ?? EXCESS_KEPT;
}
