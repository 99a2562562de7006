import { betaBinomialPmf } from '../../stats/beta-binomial.ts';
import { gameEffect } from '../others/game-effect.ts';
import type { SnapSet } from '../snap/snap-set.ts';
import type { LeftOutShares } from './left-out-shares.ts';
import { type ClassCount, expectedBeside, type TellTotals } from './tell-rest.ts';

/** One class in one cell against what was expected there. */
export interface TellTest {
  readonly k: number;
  readonly count: number;
  readonly trials: number;
  /** Share expected on these snaps. */
  readonly expected: number;
  /** Chance of as many or more if that were right; 1 where there is plainly nothing to see. */
  readonly p: number;
  /** Natural logarithm of the chance that all of the snaps are of the class, or of 1e-9 where that is smaller still. */
  readonly leastLog: number;
}

/** What a cell is tested against: the class of every own snap, and what was expected of it. */
export interface TellGround {
  readonly codes: Uint8Array;
  readonly expected: LeftOutShares;
  /** Classes that are tested; all when absent. */
  readonly asked?: readonly number[];
  /** The game of each snap, because snaps of one game are alike; absent where snaps count as independent. */
  readonly clusters?: TellClusters;
  /** All charted snaps: the cell is set against those outside of it. Absent where the expectation is taken as it is. */
  readonly totals?: TellTotals;
}

/** The games the snaps come from, and how much games differ in what was asked. */
export interface TellClusters {
  /** Number of the game of every own snap, from 0. */
  readonly gameOf: Int32Array;
  readonly games: number;
  readonly question: string;
}

/**
 * Tests every class of a cell: how likely are as many snaps of it, or more, at the share expected, when games differ as
 * they usually do (beta-binomial with the design effect of the cell's games) and the expected share is itself known from
 * no more than the snaps outside of the cell. Snaps with different expectations spread less than that, so the test errs on
 * the side of no tell.
 *
 * @param snaps - snaps of the cell on which the target was charted
 * @returns one test for every class asked of
 */
export function testCell(ground: TellGround, snaps: SnapSet): readonly TellTest[] {
  const cell = countCell(ground, snaps);
  const spread = spreadOf(ground, cell);
  return (ground.asked ?? [...cell.sums.keys()]).map((k) => {
    const seen = { count: cell.counts[k] as number, sum: cell.sums[k] as number, trials: cell.trials };
    return testClass(k, seen, { expected: expectedOf(ground, seen, k), spread });
  });
}

interface CellCount extends TellTotals {
  /** Snaps of the cell by game. */
  readonly byGame: number[];
}

function countCell({ codes, expected, clusters }: TellGround, snaps: SnapSet): CellCount {
  const sums = new Float64Array(expected.classes);
  const counts = new Float64Array(expected.classes);
  const byGame = new Array<number>(clusters?.games ?? 0).fill(0);
  let trials = 0;
  for (let w = 0; w < snaps.length; w++) {
    for (let word = snaps[w] as number; word !== 0; word &= word - 1) {
      const row = w * 32 + 31 - Math.clz32(word & -word);
      counts[codes[row] as number] = (counts[codes[row] as number] as number) + 1;
      addShares(sums, expected.shares, row);
      if (clusters) byGame[clusters.gameOf[row] as number] = (byGame[clusters.gameOf[row] as number] as number) + 1;
      trials++;
    }
  }
  return { sums, counts, trials, byGame };
}

function expectedOf({ totals }: TellGround, seen: ClassCount, k: number): number {
  if (!totals) return seen.sum / seen.trials;
  return expectedBeside(seen, {
    count: (totals.counts[k] as number) - seen.count,
    sum: (totals.sums[k] as number) - seen.sum,
    trials: totals.trials - seen.trials,
  });
}

/**
 * How alike snaps of the cell are, as the spread of a beta-binomial (1 / concentration): because they come from a few
 * games, and because they share an expectation that the other snaps taught. What a whole game leans moves the cell and
 * the rest together, so the rest counts by its snaps.
 */
function spreadOf({ clusters, totals }: TellGround, { byGame, trials }: CellCount): number {
  const games = clusters ? gameEffect(byGame, clusters.question) : 0;
  const level = totals ? 1 / (totals.trials - trials + 1) : 0;
  const alike = games + (1 - games) * level;
  return alike / (1 - alike);
}

function addShares(sums: Float64Array, shares: Float64Array, row: number): void {
  const start = row * sums.length;
  for (let k = 0; k < sums.length; k++) sums[k] = (sums[k] as number) + (shares[start + k] as number);
}

/** Excesses under this many standard errors need no exact tail: no correction would let them pass. */
const PLAINLY_NOTHING = 2;

function testClass(k: number, { count, trials }: ClassCount, { expected, spread }: Due): TellTest {
  // No snap lies outside of the cell: there is nothing to set it against.
  if (spread === Number.POSITIVE_INFINITY) return { k, count, trials, expected, p: 1, leastLog: 0 };
  const variance = trials * expected * (1 - expected) * (1 + ((trials - 1) * spread) / (1 + spread));
  const nothing = count - trials * expected < PLAINLY_NOTHING * Math.sqrt(variance);
  const p = nothing ? 1 : upperTail({ count, trials, expected }, spread);
  return { k, count, trials, expected, p, leastLog: leastLog(trials, expected, spread) };
}

interface Due {
  readonly expected: number;
  readonly spread: number;
}

function upperTail({ count, trials, expected }: Pick<TellTest, 'count' | 'trials' | 'expected'>, spread: number) {
  const pmf = betaBinomialPmf({ trials, mean: expected, concentration: 1 / spread });
  let above = 0;
  for (let k = count; k < pmf.length; k++) above += pmf[k] as number;
  return Math.min(1, above);
}

/** Smaller chances are separated by no correction: it would take a hundred million tests. */
const SMALL_ENOUGH = 1e-9;

/** Of a beta-binomial: each further snap is the likelier the more came before it. */
function leastLog(trials: number, expected: number, spread: number): number {
  if (spread === 0) return trials * Math.log(expected);
  let chance = 1;
  for (let i = 0; i < trials && chance > SMALL_ENOUGH; i++) chance *= (expected + i * spread) / (1 + i * spread);
  return Math.log(chance);
}
