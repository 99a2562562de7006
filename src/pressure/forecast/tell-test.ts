import { binomialUpperTail } from '../../stats/binomial.ts';
import { members, type SnapSet } from '../snap/snap-set.ts';
import type { LeftOutShares } from './left-out-shares.ts';

/** One class in one cell against what the forecast expected there. */
export interface TellTest {
  readonly k: number;
  readonly count: number;
  readonly trials: number;
  /** Share the forecast expected on these snaps. */
  readonly expected: number;
  /** Chance of as many or more if the forecast were right; 1 where there is plainly nothing to see. */
  readonly p: number;
}

/** What a cell is tested against: the class of every own snap, and what was expected of it. */
export interface TellGround {
  readonly codes: Uint8Array;
  readonly expected: LeftOutShares;
}

/**
 * Tests every class of a cell: how likely are as many snaps of it, or more, at the share the forecast expected. Snaps
 * whose expectations differ spread less than the binomial says, so the test errs on the side of no tell.
 *
 * @param snaps - snaps of the cell on which the target was charted
 * @returns one test per class
 */
export function testCell(ground: TellGround, snaps: SnapSet): readonly TellTest[] {
  const rows = members(snaps);
  return Array.from({ length: ground.expected.classes }, (_, k) => testClass(ground, rows, k));
}

/** Excesses under this many standard errors need no exact tail: no correction would let them pass. */
const PLAINLY_NOTHING = 1.3;

function testClass({ codes, expected: left }: TellGround, rows: readonly number[], k: number): TellTest {
  let [count, sum] = [0, 0];
  for (const row of rows) {
    sum += left.shares[row * left.classes + k] as number;
    if (codes[row] === k) count++;
  }
  const trials = rows.length;
  const expected = sum / trials;
  const nothing = count - sum < PLAINLY_NOTHING * Math.sqrt(sum * (1 - expected));
  return { k, count, trials, expected, p: nothing ? 1 : binomialUpperTail(count, trials, expected) };
}
