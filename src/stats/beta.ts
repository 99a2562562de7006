import { StatsInputError } from './errors.ts';
import { cephes } from './special-functions.ts';

/**
 * The probability that a Beta(a, b) variable is at most `x`.
 *
 * @param x - any number; below 0 gives 0, above 1 gives 1
 * @param a - first shape, above 0
 * @param b - second shape, above 0
 * @throws StatsInputError when a shape is not positive and finite, or `x` is not a number
 * @see Moshier, Cephes Mathematical Library, incbet
 */
export function betaCdf(x: number, a: number, b: number): number {
  requireShapes(a, b);
  if (Number.isNaN(x)) throw new StatsInputError('betaCdf requires a number, got NaN');
  if (x <= 0) return 0;
  return x >= 1 ? 1 : cephes.incbet(a, b, x);
}

/**
 * The value below which a Beta(a, b) variable falls with probability `p`.
 *
 * @param p - probability, 0 to 1
 * @param a - first shape, above 0
 * @param b - second shape, above 0
 * @throws StatsInputError when a shape is not positive and finite, or `p` is not a probability
 * @see Moshier, Cephes Mathematical Library, incbi; good to about 1e-10 for tails of 1e-6, to 1e-13 for tails of 1e-3
 */
export function betaQuantile(p: number, a: number, b: number): number {
  requireShapes(a, b);
  if (!(p >= 0 && p <= 1)) throw new StatsInputError(`betaQuantile requires a probability, got ${p}`);
  if (p === 0 || p === 1) return p;
  return cephes.incbi(a, b, p);
}

/**
 * Natural logarithm of the beta function.
 *
 * @param a - above 0
 * @param b - above 0
 * @throws StatsInputError when an argument is not positive and finite
 */
export function logBeta(a: number, b: number): number {
  requireShapes(a, b);
  return cephes.lgam(a) + cephes.lgam(b) - cephes.lgam(a + b);
}

/**
 * Natural logarithm of the gamma function.
 *
 * @param x - above 0
 * @throws StatsInputError when `x` is not positive and finite
 * @see Moshier, Cephes Mathematical Library, lgam
 */
export function logGamma(x: number): number {
  requirePositive(x, 'logGamma');
  return cephes.lgam(x);
}

/**
 * The digamma function, the derivative of {@link logGamma}.
 *
 * @param x - above 0
 * @throws StatsInputError when `x` is not positive and finite
 * @see Moshier, Cephes Mathematical Library, psi
 */
export function digamma(x: number): number {
  requirePositive(x, 'digamma');
  return cephes.psi(x);
}

function requireShapes(a: number, b: number): void {
  requirePositive(a, 'a beta shape');
  requirePositive(b, 'a beta shape');
}

function requirePositive(value: number, what: string): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new StatsInputError(`${what} requires a positive finite number, got ${value}`);
  }
}
