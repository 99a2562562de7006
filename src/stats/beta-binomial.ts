import { StatsInputError } from './errors.ts';
import type { Interval } from './interval.ts';
import { requireWhole } from './require-counts.ts';

/** A beta-binomial count: binomial trials with a Beta distributed chance of success. */
export interface BetaBinomial {
  /** Whole number of trials, at least 0. */
  readonly trials: number;
  /** Mean chance of success, 0 to 1. */
  readonly mean: number;
  /** Sum of the two Beta shapes, above 0: how many trials the knowledge of the mean is worth. Infinity means binomial. */
  readonly concentration: number;
}

/**
 * Central interval for a future count: whole numbers with at most half of `1 - level` on either side.
 *
 * @returns `low` and `high` in successes, 0 to `trials`
 * @throws StatsInputError when an input is out of its range
 * @example betaBinomialInterval({ trials: 12, mean: 0.5, concentration: 40, level: 0.8 }) // { low: 4, high: 8 }
 */
export function betaBinomialInterval(input: BetaBinomial & { readonly level: number }): Interval {
  if (!(input.level > 0 && input.level < 1)) {
    throw new StatsInputError(`a level must lie between 0 and 1, got ${input.level}`);
  }
  const pmf = betaBinomialPmf(input);
  const tail = (1 - input.level) / 2;
  return { low: reaching(pmf, tail), high: pmf.length - 1 - reaching(pmf.toReversed(), tail) };
}

const ROUNDING = 1e-12; // a cumulated probability this little above the tail is the tail itself

/** The first count with a cumulated probability above `tail`. */
function reaching(pmf: Float64Array, tail: number): number {
  let total = 0;
  for (let count = 0; count < pmf.length; count += 1) {
    total += pmf[count] as number;
    if (total > tail + ROUNDING) return count;
  }
  return pmf.length - 1;
}

/**
 * Probabilities of 0 to `trials` successes.
 *
 * @returns `trials` + 1 numbers that sum to 1
 * @throws StatsInputError when an input is out of its range
 */
export function betaBinomialPmf({ trials, mean, concentration }: BetaBinomial): Float64Array {
  requireWhole(trials, 'trials');
  if (!(mean >= 0 && mean <= 1)) throw new StatsInputError(`a mean share must lie between 0 and 1, got ${mean}`);
  if (!(concentration > 0)) throw new StatsInputError(`a concentration must be above 0, got ${concentration}`);
  if (mean === 1) return new Float64Array(trials + 1).fill(1, trials);
  return scaledToOne(logWeights(trials, mean, 1 / concentration));
}

/** Each probability against the one before, so that huge concentrations lose no digits; `spread` 0 is the binomial. */
function logWeights(trials: number, mean: number, spread: number): Float64Array {
  const weights = new Float64Array(trials + 1);
  for (let k = 0; k < trials; k += 1) {
    const up = (trials - k) * (k * spread + mean);
    const down = (k + 1) * ((trials - k - 1) * spread + 1 - mean);
    weights[k + 1] = (weights[k] as number) + Math.log(up / down);
  }
  return weights;
}

/** Chances from their logarithms, of any scale; written over them. */
function scaledToOne(logs: Float64Array): Float64Array {
  let top = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < logs.length; k += 1) top = Math.max(top, logs[k] as number);
  let total = 0;
  for (let k = 0; k < logs.length; k += 1) {
    logs[k] = Math.exp((logs[k] as number) - top);
    total += logs[k] as number;
  }
  for (let k = 0; k < logs.length; k += 1) logs[k] = (logs[k] as number) / total;
  return logs;
}
