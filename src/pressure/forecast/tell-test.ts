import { binomialUpperTail } from '../../stats/binomial.ts';
import type { SnapSet } from '../snap/snap-set.ts';
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
export function testCell({ codes, expected }: TellGround, snaps: SnapSet): readonly TellTest[] {
  const sums = new Float64Array(expected.classes);
  const counts = new Float64Array(expected.classes);
  let trials = 0;
  for (let w = 0; w < snaps.length; w++) {
    for (let word = snaps[w] as number; word !== 0; word &= word - 1) {
      const row = w * 32 + 31 - Math.clz32(word & -word);
      counts[codes[row] as number] = (counts[codes[row] as number] as number) + 1;
      addShares(sums, expected.shares, row);
      trials++;
    }
  }
  return Array.from(sums, (sum, k) => testClass(k, { count: counts[k] as number, sum, trials }));
}

function addShares(sums: Float64Array, shares: Float64Array, row: number): void {
  const start = row * sums.length;
  for (let k = 0; k < sums.length; k++) sums[k] = (sums[k] as number) + (shares[start + k] as number);
}

/** Excesses under this many standard errors need no exact tail: no correction would let them pass. */
const PLAINLY_NOTHING = 1.3;

interface ClassCount {
  readonly count: number;
  /** Snaps the forecast expected. */
  readonly sum: number;
  readonly trials: number;
}

function testClass(k: number, { count, sum, trials }: ClassCount): TellTest {
  const expected = sum / trials;
  const nothing = count - sum < PLAINLY_NOTHING * Math.sqrt(sum * (1 - expected));
  return { k, count, trials, expected, p: nothing ? 1 : binomialUpperTail(count, trials, expected) };
}
