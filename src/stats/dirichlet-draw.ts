import { StatsInputError } from './errors.ts';
import type { GammaDraw } from './gamma-draw.ts';
import { cephes } from './special-functions.ts';

/**
 * One draw of shares from a Dirichlet distribution, written into `out`.
 *
 * @param gamma - the source of gamma draws
 * @param alpha - one number of at least 0 per category, not all 0
 * @param out - array of the same length
 * @returns `out`, summing to 1
 * @throws StatsInputError when an alpha is negative or not finite, all are 0, or the lengths differ
 */
export function dirichletDraw(gamma: GammaDraw, alpha: ArrayLike<number>, out: Float64Array): Float64Array {
  if (out.length !== alpha.length) {
    throw new StatsInputError(`a Dirichlet draw of ${alpha.length} shares requires as many places, got ${out.length}`);
  }
  // Small alphas underflow as plain gamma draws, so the draws are kept as logarithms until they are scaled.
  let top = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < out.length; i += 1) {
    const value = logDraw(gamma, alpha[i] ?? Number.NaN);
    out[i] = value;
    top = Math.max(top, value);
  }
  if (top === Number.NEGATIVE_INFINITY) throw new StatsInputError('a Dirichlet draw requires an alpha above 0');
  return scaledToOne(out, top);
}

function logDraw(gamma: GammaDraw, alpha: number): number {
  return alpha === 0 ? Number.NEGATIVE_INFINITY : gamma.drawLog(alpha);
}

function scaledToOne(logs: Float64Array, top: number): Float64Array {
  let total = 0;
  for (let i = 0; i < logs.length; i += 1) {
    const value = logs[i] as number;
    const weight = value === Number.NEGATIVE_INFINITY ? 0 : cephes.exp(value - top);
    logs[i] = weight;
    total += weight;
  }
  for (let i = 0; i < logs.length; i += 1) logs[i] = (logs[i] as number) / total;
  return logs;
}
