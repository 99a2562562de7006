import { betaBinomialPmf } from '../../stats/beta-binomial.ts';
import { gameEffect } from '../others/game-effect.ts';
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
  /** Whose snaps are alike; absent where snaps count as independent. */
  readonly clusters?: TellClusters;
}

/** The games the snaps come from, and how much games differ in what was asked. */
export interface TellClusters {
  /** Number of the game of every own snap, from 0. */
  readonly gameOf: Int32Array;
  readonly games: number;
  readonly question: string;
}

/**
 * Tests every class of a cell: how likely are as many snaps of it, or more, at the share the forecast expected, when
 * games differ as they usually do (beta-binomial with the design effect of the cell's games). Snaps whose expectations
 * differ spread less than that, so the test errs on the side of no tell.
 *
 * @param snaps - snaps of the cell on which the target was charted
 * @returns one test per class
 */
export function testCell(ground: TellGround, snaps: SnapSet): readonly TellTest[] {
  const { codes, expected } = ground;
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
  const tested = Array.from(sums, (sum, k) => testClass(k, { count: counts[k] as number, sum, trials }));
  if (tested.every(({ p }) => p === 1)) return tested;
  const { clusters } = ground;
  const alike = clusters ? gameEffect(trialsByGame(clusters, snaps), clusters.question) : 0;
  return tested.map((test) => (test.p === 1 ? test : { ...test, p: upperTail(test, alike) }));
}

function trialsByGame({ gameOf, games }: TellClusters, snaps: SnapSet): number[] {
  const trials = new Array<number>(games).fill(0);
  for (const row of members(snaps)) trials[gameOf[row] as number] = (trials[gameOf[row] as number] as number) + 1;
  return trials;
}

function upperTail({ count, trials, expected }: TellTest, alike: number): number {
  const concentration = alike > 0 ? 1 / alike - 1 : Number.POSITIVE_INFINITY;
  const pmf = betaBinomialPmf({ trials, mean: expected, concentration });
  let above = 0;
  for (let k = count; k < pmf.length; k++) above += pmf[k] as number;
  return Math.min(1, above);
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

/** Not yet a test: 0 stands for "to be tested". */
function testClass(k: number, { count, sum, trials }: ClassCount): TellTest {
  const expected = sum / trials;
  const nothing = count - sum < PLAINLY_NOTHING * Math.sqrt(sum * (1 - expected));
  return { k, count, trials, expected, p: nothing ? 1 : 0 };
}
