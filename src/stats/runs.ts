import { logChoose } from './binomial.ts';
import { StatsInputError } from './errors.ts';
import { normalCdf } from './normal.ts';
import { requireWhole } from './require-counts.ts';

/** How often a sequence of two symbols changes, against chance at the same frequencies. */
export interface RunsTest {
  /** How often the symbol that comes first occurs. */
  readonly n1: number;
  /** How often the other symbol occurs. */
  readonly n2: number;
  readonly runs: number;
  /** Expected runs; null when one symbol is missing. */
  readonly mean: number | null;
  readonly variance: number | null;
  /** Above 0: more changes than by chance. Null when the variance is 0 or undefined. */
  readonly z: number | null;
  /** Two-sided, from the normal approximation without continuity correction. */
  readonly pNormal: number | null;
  /** From the exact distribution; null when one symbol is missing or there are more than 10,000 symbols. */
  readonly exact: ExactRuns | null;
}

/** Exact p-values of a number of runs. */
export interface ExactRuns {
  /** P(as few runs). */
  readonly lower: number;
  /** P(as many runs). */
  readonly upper: number;
  /** Twice the smaller, at most 1. */
  readonly twoSided: number;
}

/**
 * Runs test of a sequence of at most two symbols.
 *
 * @param sequence - symbols in order, from one stretch only: joining stretches makes runs that never were
 * @throws StatsInputError when there are more than two symbols
 * @see Wald and Wolfowitz 1940, Annals of Mathematical Statistics 11:147; Swed and Eisenhart 1943 for exact tables
 */
export function runsTest(sequence: readonly (string | number | boolean)[]): RunsTest {
  const symbols = new Set(sequence);
  if (symbols.size > 2) throw new StatsInputError(`runsTest requires at most two symbols, got ${symbols.size}`);
  const n1 = sequence.filter((symbol) => symbol === sequence[0]).length;
  const runs = sequence.filter((symbol, i) => i === 0 || symbol !== sequence[i - 1]).length;
  return runsTestFromCounts({ n1, n2: sequence.length - n1, runs });
}

/**
 * Runs test from the counts alone.
 *
 * @throws StatsInputError when the counts are not whole or cannot form that many runs
 * @see {@link runsTest}
 */
export function runsTestFromCounts({ n1, n2, runs }: Pick<RunsTest, 'n1' | 'n2' | 'runs'>): RunsTest {
  requireRuns(n1, n2, runs);
  if (n1 === 0 || n2 === 0) return { n1, n2, runs, mean: null, variance: null, z: null, pNormal: null, exact: null };
  const n = n1 + n2;
  const mean = (2 * n1 * n2) / n + 1;
  const variance = ((mean - 1) * (mean - 2)) / (n - 1);
  const z = variance > 0 ? (runs - mean) / Math.sqrt(variance) : null;
  const pNormal = z === null ? null : 2 * normalCdf(-Math.abs(z));
  return { n1, n2, runs, mean, variance, z, pNormal, exact: n <= MOST_EXACT ? exactRuns(n1, n2, runs) : null };
}

const MOST_EXACT = 10_000; // judgment: beyond, the normal approximation is exact for every purpose

function requireRuns(n1: number, n2: number, runs: number): void {
  requireWhole(n1, 'n1');
  requireWhole(n2, 'n2');
  requireWhole(runs, 'runs');
  const least = Math.min(n1, 1) + Math.min(n2, 1);
  const most = n1 === n2 ? 2 * n1 : 2 * Math.min(n1, n2) + 1;
  if (runs < least || runs > most) throw new StatsInputError(`${n1} and ${n2} symbols cannot form ${runs} runs`);
}

function exactRuns(n1: number, n2: number, runs: number): ExactRuns {
  let [lower, upper] = [0, 0];
  const most = 2 * Math.min(n1, n2) + 1;
  for (let r = 2; r <= most; r += 1) {
    const probability = runsProbability(n1, n2, r);
    if (r <= runs) lower += probability;
    if (r >= runs) upper += probability;
  }
  lower = Math.min(1, lower);
  upper = Math.min(1, upper);
  return { lower, upper, twoSided: Math.min(1, 2 * Math.min(lower, upper)) };
}

function runsProbability(n1: number, n2: number, runs: number): number {
  const all = logChoose(n1 + n2, n1);
  const ways = (first: number, second: number) =>
    first > n1 || second > n2 ? 0 : Math.exp(logChoose(n1 - 1, first - 1) + logChoose(n2 - 1, second - 1) - all);
  const half = Math.floor(runs / 2);
  return runs % 2 === 0 ? 2 * ways(half, half) : ways(half + 1, half) + ways(half, half + 1);
}
