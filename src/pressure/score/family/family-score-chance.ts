import { tailQuantiles } from '../../../stats/quantile.ts';
import type { Spread } from '../score-result.ts';

/** Level of every score's interval. */
export const SCORE_LEVEL = 0.8;

/** Mean and central 80% interval of draws. */
export function spreadOf(draws: Float64Array): Spread {
  const tail = (1 - SCORE_LEVEL) / 2;
  return { mean: meanOf(draws), ...tailQuantiles(draws, tail) };
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
  const wins = new Float64Array(candidates.length);
  const count = candidates[0]?.length ?? 0;
  for (let i = 0; i < count; i++) {
    const { best, ties } = bestOf(candidates, i);
    const win = 1 / (ties * count);
    for (let c = 0; c < candidates.length; c++) {
      if (candidates[c]?.[i] === best) wins[c] = (wins[c] as number) + win;
    }
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
