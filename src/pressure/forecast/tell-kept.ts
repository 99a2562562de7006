import type { Target } from './forecast-result.ts';

/** Part of a tell's excess over the forecast to plan with where no open data tell: a third. */
export const EXCESS_KEPT = 1 / 3;

/** With what a tell was expected: their own film alone, or the archive's too. */
export type TellGrounds = 'alone' | 'archive';

/**
 * Part of the excess that tells of a kind kept in the next game, rounded toward what is safe. Open professional play data
 * of 2022, 414 windows of four games to the next (nflverse CC BY 4.0, FTN Data via nflverse CC BY-SA 4.0);
 * `bench/tells.ts` prints them. With the archive run or pass kept .81 over 120 snaps (held 8 of 9), motion .86 over 120
 * (11 of 11). Own film alone run or pass .72 over 288 (21 of 24), motion .87 over 283 (23 of 24), other answers .06 over
 * 22 (0 of 2), screens -.23 over 8. Tells that showed in most games kept .82, the others .23. Quick throws gave none.
 */
const KEPT: Readonly<Partial<Record<Target, Readonly<Record<TellGrounds, number>>>>> = {
  run_or_pass: { alone: 1 / 2, archive: 1 / 2 },
  motion: { alone: 2 / 3, archive: 2 / 3 },
  answer: { alone: 0, archive: 0 },
  screen: { alone: 0, archive: 0 },
};

/** Part of the excess of a target's tells to plan with. */
export function excessKept(target: Target, grounds: TellGrounds): number {
  return KEPT[target]?.[grounds] ?? EXCESS_KEPT;
}

/**
 * Part of the error a question's tells are given in the search beside the others: a tenth where such tells kept nothing
 * of their excess in the next game, since naming one is worth less than naming another (the size is judgment).
 */
export function errorPart(target: Target): number {
  return excessKept(target, 'alone') > 0 ? 1 : 1 / 10;
}
