import { dirichletDraw } from './dirichlet-draw.ts';
import { StatsInputError } from './errors.ts';
import { gammaDraw } from './gamma-draw.ts';
import { requireWhole } from './require-counts.ts';
import { seededUniform } from './seeded-uniform.ts';
import { cephes } from './special-functions.ts';

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
 * @see Doty-Humphrey, PractRand: sfc32
 */
export function createRandom(seed: number | string): Random {
  const uniform = seededUniform(seed);
  const normal = polarNormal(uniform);
  const gamma = gammaDraw(uniform, normal);
  const integer = (n: number) => boundedInteger(uniform, n);
  return {
    uniform,
    normal,
    gamma: gamma.draw,
    dirichlet: (alpha, out = new Float64Array(alpha.length)) => dirichletDraw(gamma, alpha, out),
    integer,
    shuffle: (items) => fisherYates(integer, items),
  };
}

/** Marsaglia's polar method: two normals at a time, the second kept for the next call. */
function polarNormal(uniform: () => number): () => number {
  const kept = Float64Array.of(Number.NaN); // a captured variable would be allocated anew at every draw
  return () => {
    const value = kept[0] as number;
    kept[0] = Number.NaN;
    if (!Number.isNaN(value)) return value;
    let [x, y, square] = [0, 0, 0];
    do {
      x = 2 * uniform() - 1;
      y = 2 * uniform() - 1;
      square = x * x + y * y;
    } while (square >= 1 || square === 0);
    const scale = Math.sqrt((-2 * cephes.log(square)) / square);
    kept[0] = y * scale;
    return x * scale;
  };
}

function boundedInteger(uniform: () => number, n: number): number {
  requireWhole(n, 'the bound of a random integer');
  if (n === 0) throw new StatsInputError('a random integer requires a bound of at least 1, got 0');
  return Math.floor(uniform() * n);
}

function fisherYates<T>(integer: (n: number) => number, items: T[]): T[] {
  for (let last = items.length - 1; last > 0; last -= 1) {
    const pick = integer(last + 1);
    const moved = items[last] as T;
    items[last] = items[pick] as T;
    items[pick] = moved;
  }
  return items;
}
