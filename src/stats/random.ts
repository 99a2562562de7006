import { dirichletDraw, dirichletDraws } from './dirichlet-draw.ts';
import { StatsInputError } from './errors.ts';
import { nextGamma } from './gamma-draw.ts';
import { nextNormal } from './normal-draw.ts';
import { nextUniform, type RandomState, randomState } from './random-state.ts';
import { requireWhole } from './require-counts.ts';

/** A stream of random numbers that its seed alone decides. */
export interface Random {
  /** At least 0 and below 1, in steps of 2⁻⁵³. */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
  /** Gamma with rate 1. @throws StatsInputError unless `shape` is positive and finite */
  gamma(shape: number): number;
  /**
   * Shares that sum to 1, one per entry of `alpha`, written into `out` when given. An `alpha` of 0 gives a share of 0.
   *
   * @throws StatsInputError when an alpha is negative or not finite, or all are 0
   */
  dirichlet(alpha: ArrayLike<number>, out?: Float64Array): Float64Array;
  /**
   * As many such draws as `out` has room for, share `k` of draw `i` at `i * alpha.length + k`; quicker, and not the same
   * numbers as those of {@link Random.dirichlet}.
   */
  dirichlets(alpha: Float64Array, out: Float64Array): Float64Array;
  /** Whole number of at least 0 and below `n`. @throws StatsInputError unless `n` is a whole number above 0 */
  integer(n: number): number;
  /** Shuffles the array in place and hands it back. */
  shuffle<T>(items: T[]): T[];
}

/**
 * A seeded stream of random numbers. The same seed gives the same numbers on every platform: the generator works on
 * whole numbers, and logarithms and exponentials come from the compiled library, not from the JavaScript engine.
 *
 * @param seed - any number or text
 * @see {@link randomState}
 */
export function createRandom(seed: number | string): Random {
  const state = randomState(seed);
  return {
    uniform: () => nextUniform(state),
    normal: () => nextNormal(state),
    gamma: (shape) => nextGamma(state, shape),
    dirichlet: (alpha, out = new Float64Array(alpha.length)) => dirichletDraw(state, alpha, out),
    dirichlets: (alpha, out) => dirichletDraws(state, alpha, out),
    integer: (n) => boundedInteger(state, n),
    shuffle: (items) => fisherYates(state, items),
  };
}

function boundedInteger(state: RandomState, n: number): number {
  requireWhole(n, 'the bound of a random integer');
  if (n === 0) throw new StatsInputError('a random integer requires a bound of at least 1, got 0');
  return Math.floor(nextUniform(state) * n);
}

function fisherYates<T>(state: RandomState, items: T[]): T[] {
  for (let last = items.length - 1; last > 0; last -= 1) {
    const pick = Math.floor(nextUniform(state) * (last + 1));
    const moved = items[last] as T;
    items[last] = items[pick] as T;
    items[pick] = moved;
  }
  return items;
}
