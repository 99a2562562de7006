import { quantilesBetween, type TailNeighbours, tailNeighbours } from '../../../stats/quantile.ts';
import type { Spread } from '../score-result.ts';

/** Level of every score's interval. */
export const SCORE_LEVEL = 0.8;

/** Mean and central 80% interval of draws, the mean where it is known. */
export function spreadOf(draws: Float64Array, mean: number = meanOf(draws)): Spread {
  return { mean, ...quantilesBetween(scoreTails(draws)) };
}

/** What the ends of the interval lie between: enough for the interval of draws changed in any way that keeps their order. */
export function scoreTails(draws: Float64Array): TailNeighbours {
  return tailNeighbours(draws, (1 - SCORE_LEVEL) / 2);
}

/** Plain mean of draws. */
export function meanOf(draws: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < draws.length; i++) sum += draws[i] as number;
  return sum / draws.length;
}

/** Share of the draws above zero. */
export function chanceAbove(draws: Float64Array): number {
  let above = 0;
  for (let i = 0; i < draws.length; i++) if ((draws[i] as number) > 0) above += 1;
  return above / draws.length;
}

/**
 * How often each candidate is the best of all, over shared draws; candidates that tie share the draw. The chances sum
 * to 1.
 */
export function chancesBest(candidates: readonly Float64Array[]): Float64Array {
  const best = new Float64Array(candidates[0]?.length ?? 0).fill(Number.NEGATIVE_INFINITY);
  const ties = new Float64Array(best.length);
  for (const draws of candidates) keepBest(draws, best, ties);
  // A draw counts for its share of all, split among those that tie for it.
  for (let i = 0; i < ties.length; i++) ties[i] = 1 / ((ties[i] as number) * ties.length);
  return Float64Array.from(candidates, (draws) => sharesWon(draws, best, ties));
}

/** The best value of each draw so far, and how many have it. */
function keepBest(draws: Float64Array, best: Float64Array, ties: Float64Array): void {
  for (let i = 0; i < best.length; i++) {
    const value = draws[i] as number;
    if (value > (best[i] as number)) {
      best[i] = value;
      ties[i] = 1;
    } else if (value === best[i]) ties[i] = (ties[i] as number) + 1;
  }
}

function sharesWon(draws: Float64Array, best: Float64Array, worth: Float64Array): number {
  let won = 0;
  for (let i = 0; i < best.length; i++) if (draws[i] === best[i]) won += worth[i] as number;
  return won;
}
