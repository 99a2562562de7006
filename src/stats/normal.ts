import { StatsInputError } from './errors.ts';
import { cephes } from './special-functions.ts';

/**
 * The value below which a standard normal variable falls with probability `p`.
 *
 * @param p - probability, 0 to 1; the ends give minus and plus infinity
 * @throws StatsInputError when `p` is not a probability
 * @see Moshier, Cephes Mathematical Library, ndtri
 * @example normalQuantile(0.975) // 1.959963984540054
 */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) throw new StatsInputError(`normalQuantile requires a probability, got ${p}`);
  if (p === 0) return Number.NEGATIVE_INFINITY;
  return p === 1 ? Number.POSITIVE_INFINITY : cephes.ndtri(p);
}

/**
 * The probability that a standard normal variable is at most `x`.
 *
 * @param x - any number, infinities included
 * @throws StatsInputError when `x` is not a number
 * @see Moshier, Cephes Mathematical Library, ndtr
 * @example normalCdf(1.96) // 0.97500210485177952
 */
export function normalCdf(x: number): number {
  if (Number.isNaN(x)) throw new StatsInputError('normalCdf requires a number, got NaN');
  if (!Number.isFinite(x)) return x > 0 ? 1 : 0;
  return cephes.ndtr(x);
}

/**
 * The half-width, in standard errors, of a two-sided normal interval.
 *
 * @param level - confidence level, strictly between 0 and 1
 * @throws StatsInputError when `level` is outside that range
 * @example normalWidth(0.95) // 1.959963984540054
 */
export function normalWidth(level: number): number {
  if (!(level > 0 && level < 1)) {
    throw new StatsInputError(`a confidence level must lie between 0 and 1, got ${level}`);
  }
  return normalQuantile(1 - (1 - level) / 2);
}
