import { StatsInputError } from './errors.ts';
import { cephes } from './special-functions.ts';

/** Counts of one group, and the shares its own are thought to lie around. */
export interface DirichletMultinomial {
  /** At least 0 each; they need not be whole. */
  readonly counts: ArrayLike<number>;
  /** Above 0 each, summing to 1. */
  readonly shares: ArrayLike<number>;
  /** Sum of the Dirichlet parameters, above 0: how many counts the shares are worth. */
  readonly worth: number;
}

/**
 * Natural logarithm of the chance of a sequence of draws with these counts, when the group's shares are Dirichlet
 * distributed around `shares`: no multinomial coefficient.
 *
 * @throws StatsInputError when the lengths differ or the worth is not positive
 * @see Mosimann 1962, Biometrika 49:65
 */
export function logDirichletMultinomial({ counts, shares, worth }: DirichletMultinomial): number {
  if (counts.length !== shares.length) throw new StatsInputError('counts and shares require the same categories');
  if (!(worth > 0)) throw new StatsInputError(`a worth must be above 0, got ${worth}`);
  let total = 0;
  let log = 0;
  for (let k = 0; k < counts.length; k++) {
    const count = counts[k] as number;
    if (count === 0) continue;
    const parameter = worth * (shares[k] as number);
    total += count;
    log += cephes.lgam(parameter + count) - cephes.lgam(parameter);
  }
  return total === 0 ? 0 : log + cephes.lgam(worth) - cephes.lgam(worth + total);
}
