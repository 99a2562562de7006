import { quantile } from '../../../stats/quantile.ts';
import type { Spread } from '../score-result.ts';

/** Level of every score's interval. */
export const SCORE_LEVEL = 0.8;

/** Mean and central 80% interval of draws. */
export function spreadOf(draws: Float64Array): Spread {
  const tail = (1 - SCORE_LEVEL) / 2;
  return {
    mean: draws.reduce((sum, value) => sum + value, 0) / draws.length,
    low: quantile(draws, tail),
    high: quantile(draws, 1 - tail),
  };
}

/** Share of the draws above zero. */
export function chanceAbove(draws: Float64Array): number {
  return draws.reduce((count, value) => count + (value > 0 ? 1 : 0), 0) / draws.length;
}

/**
 * How often each candidate is the best of all, over shared draws; candidates that tie share the draw. The chances sum
 * to 1.
 */
export function chancesBest(candidates: readonly Float64Array[]): Float64Array {
  const wins = new Float64Array(candidates.length);
  const count = candidates[0]?.length ?? 0;
  for (let i = 0; i < count; i++) {
    const { best, ties } = bestOf(candidates, i);
    candidates.forEach((draws, c) => {
      if (draws[i] === best) wins[c] = (wins[c] as number) + 1 / (ties * count);
    });
  }
  return wins;
}

function bestOf(candidates: readonly Float64Array[], draw: number): { best: number; ties: number } {
  let [best, ties] = [Number.NEGATIVE_INFINITY, 0];
  for (const draws of candidates) {
    const value = draws[draw] as number;
    if (value > best) [best, ties] = [value, 1];
    else if (value === best) ties += 1;
  }
  return { best, ties };
}
