import { StatsInputError } from './errors.ts';
import { nextNormal } from './normal-draw.ts';
import { nextUniform, type RandomState } from './random-state.ts';
import { cephes } from './special-functions.ts';

/**
 * The next gamma number of a stream, with rate 1; for tiny shapes it may underflow to 0.
 *
 * @throws StatsInputError unless the shape is positive and finite
 * @see Marsaglia and Tsang 2000, ACM Transactions on Mathematical Software 26:363, with their step for shapes below 1
 */
export function nextGamma(state: RandomState, shape: number): number {
  requireShape(shape);
  const d = cubeCentre(shape);
  return gammaAround(state, { shape, d, c: cubeSlope(d) });
}

/** The logarithm of such a number, finite for every positive shape. @throws StatsInputError as {@link nextGamma} */
export function nextLogGamma(state: RandomState, shape: number): number {
  requireShape(shape);
  const d = cubeCentre(shape);
  return logGammaAround(state, { shape, d, c: cubeSlope(d) });
}

/** What the draws of one shape share. */
export interface GammaShape {
  readonly shape: number;
  /** {@link cubeCentre} of the shape. */
  readonly d: number;
  /** {@link cubeSlope} of the center. */
  readonly c: number;
}

/** The next gamma number of a shape with known constants; the shape is positive and finite. */
export function gammaAround(state: RandomState, shape: GammaShape): number {
  return shape.shape >= 1 ? squeezedCube(state, shape.d, shape.c) : cephes.exp(logGammaAround(state, shape));
}

function logGammaAround(state: RandomState, { shape, d, c }: GammaShape): number {
  const log = cephes.log(squeezedCube(state, d, c));
  return shape >= 1 ? log : log + cephes.log(1 - nextUniform(state)) / shape;
}

/** The paper's d; shapes below 1 are drawn one higher and scaled down. */
export function cubeCentre(shape: number): number {
  return (shape >= 1 ? shape : shape + 1) - 1 / 3;
}

/** The paper's c. */
export function cubeSlope(d: number): number {
  return 1 / Math.sqrt(9 * d);
}

function requireShape(shape: number): void {
  if (!(shape > 0 && shape < Number.POSITIVE_INFINITY)) {
    throw new StatsInputError(`a gamma draw requires a positive finite shape, got ${shape}`);
  }
}

function squeezedCube(state: RandomState, d: number, c: number): number {
  for (;;) {
    const x = nextNormal(state);
    const root = 1 + c * x;
    if (root <= 0) continue;
    const v = root * root * root;
    const u = 1 - nextUniform(state);
    if (u < 1 - 0.0331 * x * x * x * x) return d * v; // the paper's squeeze constant
    if (cephes.log(u) < 0.5 * x * x + d * (1 - v + cephes.log(v))) return d * v;
  }
}
