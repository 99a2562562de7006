/// <reference path="./cephes.d.ts" />
import { chdtrc, compiled, exp, incbet, incbi, lgam, log, ndtr, ndtri, psi } from 'cephes';

// The ES module build compiles its WebAssembly asynchronously. Waiting here, once, lets every function of this room
// stay synchronous: a module that imports this one is not run before the program is ready.
await compiled;

/** The special functions of Moshier's Cephes library, ready to be called. */
export const cephes = {
  /** Upper tail of the chi-square distribution: degrees of freedom, value. */
  chdtrc,
  /** Exponential function. */
  exp,
  /** Regularized incomplete beta function: two shapes, value. */
  incbet,
  /** Its inverse: two shapes, probability. */
  incbi,
  /** Logarithm of the gamma function. */
  lgam,
  /** Natural logarithm. */
  log,
  /** Normal distribution function. */
  ndtr,
  /** Normal quantile. */
  ndtri,
  /** Digamma function. */
  psi,
} as const;
