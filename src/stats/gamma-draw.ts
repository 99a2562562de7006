import { StatsInputError } from './errors.ts';
import { cephes } from './special-functions.ts';

/** Draws from gamma distributions with rate 1. */
export interface GammaDraw {
  /** A draw; for tiny shapes it may underflow to 0. */
  readonly draw: (shape: number) => number;
  /** The logarithm of such a draw, finite for every positive shape. */
  readonly drawLog: (shape: number) => number;
}

/**
 * Gamma draws built on given uniform and normal sources.
 *
 * @throws StatsInputError (when drawing) unless the shape is positive and finite
 * @see Marsaglia and Tsang 2000, ACM Transactions on Mathematical Software 26:363, with their step for shapes below 1
 */
export function gammaDraw(uniform: () => number, normal: () => number): GammaDraw {
  const large = (shape: number) => squeezedCube(shape - 1 / 3, uniform, normal);
  const boost = (shape: number) => cephes.log(1 - uniform()) / shape;
  const drawLog = (shape: number) => {
    requireShape(shape);
    return shape >= 1 ? cephes.log(large(shape)) : cephes.log(large(shape + 1)) + boost(shape);
  };
  const draw = (shape: number) => {
    requireShape(shape);
    return shape >= 1 ? large(shape) : cephes.exp(drawLog(shape));
  };
  return { draw, drawLog };
}

function requireShape(shape: number): void {
  if (!(shape > 0 && shape < Number.POSITIVE_INFINITY)) {
    throw new StatsInputError(`a gamma draw requires a positive finite shape, got ${shape}`);
  }
}

function squeezedCube(d: number, uniform: () => number, normal: () => number): number {
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal();
    const root = 1 + c * x;
    if (root <= 0) continue;
    const v = root * root * root;
    const u = 1 - uniform();
    if (u < 1 - 0.0331 * x * x * x * x) return d * v; // the paper's squeeze constant
    if (cephes.log(u) < 0.5 * x * x + d * (1 - v + cephes.log(v))) return d * v;
  }
}
