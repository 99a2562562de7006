/**
 * The part of the cephes package this room uses. The package ships types for its CommonJS entry only, so its ES module
 * needs this declaration.
 */
declare module 'cephes' {
  /** Settles once the WebAssembly program is compiled; no function below works before. */
  export const compiled: Promise<void>;
  /** Normal distribution function. */
  export function ndtr(x: number): number;
  /** Normal quantile. */
  export function ndtri(p: number): number;
  /** Regularized incomplete beta function. */
  export function incbet(a: number, b: number, x: number): number;
  /** Inverse of the regularized incomplete beta function. */
  export function incbi(a: number, b: number, p: number): number;
  /** Logarithm of the absolute value of the gamma function. */
  export function lgam(x: number): number;
  /** Digamma function. */
  export function psi(x: number): number;
  /** Upper tail of the chi-square distribution. */
  export function chdtrc(df: number, x: number): number;
  /** Natural logarithm. */
  export function log(x: number): number;
  /** Exponential function. */
  export function exp(x: number): number;
}
