import { StatsInputError } from './errors.ts';
import { cephes } from './special-functions.ts';

/**
 * The probability that a Beta(a, b) variable is at most `x`.
 *
 * @param x - any number; below 0 gives 0, above 1 gives 1
 * @param a - first shape, above 0
 * @param b - second shape, above 0
 * @throws StatsInputError when a shape is not positive and finite, or `x` is not a number
 * @see Moshier, Cephes Mathematical Library, incbet; the largest error seen is 2e-8, for shapes of .05 and 3,400
 */
export function betaCdf(x: number, a: number, b: number): number {
  requireShapes(a, b);
  if (Number.isNaN(x)) throw new StatsInputError('betaCdf requires a number, got NaN');
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  return gammasOverflow(a, b) ? shiftedCdf(x, a, b) : cephes.incbet(a, b, x);
}

/**
 * The value below which a Beta(a, b) variable falls with probability `p`; 0 where it is too small for a double.
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
  if (a < 1 && leadingLog(p, a, b) < SMALLEST_LOG) return 0;
  return gammasOverflow(a, b) ? bisectedQuantile(p, a, b) : cephes.incbi(a, b, p);
}

/** Values of a smaller logarithm are 0: near the smallest double the library's inverse stops with an error. */
const SMALLEST_LOG = -690;

/**
 * The logarithm of a quantile that is very small, where the distribution function is its leading term alone.
 *
 * @see https://dlmf.nist.gov/8.17.E7: I_x(a, b) = x^a / (a B(a, b)) (1 + O(x))
 */
function leadingLog(p: number, a: number, b: number): number {
  return (cephes.log(p) + cephes.log(a) + logBeta(a, b)) / a;
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

/**
 * The largest exponent with an exponential that is a double, and the largest argument with a gamma that is one: MAXLOG and
 * MAXGAM of Moshier, Cephes Mathematical Library (from memory; a test checks the edge against the library itself).
 */
const LARGEST = { logarithm: 709.782712893384, gamma: 171.6243769563027 } as const;

/**
 * Where Cephes multiplies the gammas of the two shapes although the product is not a double, and so returns 0: their sum
 * is just below the largest gamma, and one of them is below 1.
 */
function gammasOverflow(a: number, b: number): boolean {
  return Math.min(a, b) < 1 && a + b < LARGEST.gamma && cephes.lgam(a) + cephes.lgam(b) > LARGEST.logarithm - 1;
}

/**
 * The distribution function by way of a neighbor with gammas that are doubles: the shape below 1 raised by one.
 *
 * @see NIST Digital Library of Mathematical Functions, 8.17.20 and 8.17.21 (numbers from memory)
 */
function shiftedCdf(x: number, a: number, b: number): number {
  const step = Math.exp(a * Math.log(x) + b * Math.log1p(-x) - logBeta(a, b));
  const value = a < b ? cephes.incbet(a + 1, b, x) + step / a : cephes.incbet(a, b + 1, x) - step / b;
  return Math.min(1, Math.max(0, value));
}

/** Halvings of the bracket: enough to come from any double to the next. */
const HALVINGS = 1100;

/** The quantile by halving a bracket; on the logarithm, since a shape near 0 puts quantiles next to 0. */
function bisectedQuantile(p: number, a: number, b: number): number {
  let [low, high] = [Math.log(Number.MIN_VALUE), 0];
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (betaCdf(Math.exp(middle), a, b) < p) low = middle;
    else high = middle;
  }
  return Math.exp(high);
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
