import { StatsInputError } from './errors.ts';
import { normalCdf } from './normal.ts';

/** One stratum: successes and trials of the group in question and of those it is compared with. */
export interface Stratum {
  readonly successes: number;
  readonly trials: number;
  readonly otherSuccesses: number;
  readonly otherTrials: number;
}

/** Whether a group succeeds more or less often than the others within its strata. */
export interface MantelHaenszel {
  readonly successes: number;
  /** Successes the strata alone would give. */
  readonly expected: number;
  /** Standard score of the difference, without continuity correction; null where no stratum can tell. */
  readonly z: number | null;
  /** Chance of so few successes, and of so many, were the strata all there is. */
  readonly pFewer: number;
  readonly pMore: number;
}

/**
 * The Mantel-Haenszel test over strata of two groups.
 *
 * @throws StatsInputError when a count is negative or there are more successes than trials
 * @see Mantel and Haenszel 1959, Journal of the National Cancer Institute 22:719
 */
export function mantelHaenszel(strata: readonly Stratum[]): MantelHaenszel {
  const sums = { successes: 0, expected: 0, variance: 0 };
  for (const stratum of strata) {
    requireCounts(stratum);
    const { successes, trials, otherSuccesses, otherTrials } = stratum;
    const all = trials + otherTrials;
    const won = successes + otherSuccesses;
    sums.successes += successes;
    sums.expected += all === 0 ? 0 : (trials * won) / all;
    sums.variance += all < 2 ? 0 : (trials * otherTrials * won * (all - won)) / (all * all * (all - 1));
  }
  const { successes, expected, variance } = sums;
  const z = variance > 0 ? (successes - expected) / Math.sqrt(variance) : null;
  return { successes, expected, z, pFewer: z === null ? 1 : normalCdf(z), pMore: z === null ? 1 : normalCdf(-z) };
}

function requireCounts({ successes, trials, otherSuccesses, otherTrials }: Stratum): void {
  const sound = successes >= 0 && otherSuccesses >= 0 && successes <= trials && otherSuccesses <= otherTrials;
  if (!sound) throw new StatsInputError('mantelHaenszel requires counts with no more successes than trials');
}
