import { betaQuantile } from './beta.ts';
import { StatsInputError } from './errors.ts';

/**
 * How many standard errors to each side make an interval when the standard error itself rests on few observations.
 *
 * @param level - confidence level, strictly between 0 and 1
 * @param degrees - degrees of freedom, above 0; clusters less one for a clustered mean
 * @throws StatsInputError when the level or the degrees are out of range
 * @see Student's t from the beta distribution, Abramowitz and Stegun 1964, 26.7.1
 * @example studentWidth(0.95, 5) // 2.5706
 */
export function studentWidth(level: number, degrees: number): number {
  if (!(level > 0 && level < 1)) throw new StatsInputError(`a level must lie between 0 and 1, got ${level}`);
  if (!(degrees > 0)) throw new StatsInputError(`degrees of freedom must be above 0, got ${degrees}`);
  const share = betaQuantile(level, 0.5, degrees / 2);
  return Math.sqrt((degrees * share) / (1 - share));
}
