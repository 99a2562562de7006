import { beliefOnGrid, WORTHS, weighed } from '../forecast/worth-grid.ts';

/** Timed throws of one offense on one answer. */
export interface TimedThrows {
  readonly throws: number;
  /** Mean logarithm of seconds from snap to release. */
  readonly mean: number;
}

/** A curve to shrink to, and what is believed of its worth. */
export interface ReleaseBelief {
  readonly mu: number;
  readonly sigma: number;
  /** Throws of one offense that weigh as much as the curve: the middle of the belief. */
  readonly worth: number;
}

/** Spread of the belief in a curve's worth, as in the forecast: standard deviation of its logarithm. */
const SPREAD = 1.2;

/** Chance that this opponent is none of the archive's kind. */
const NONE_OF_THEIR_KIND = 0.25;

/**
 * Throws a curve is worth against an offense's own: the belief weighed by how far other offenses lie from one another and
 * this one from the curve. An offense's mean is normal around it with the variance of its throws plus sigma^2 / worth.
 *
 * @param others - each other offense, in the units of the curve
 * @returns the worth that gives the own throws their mean weight n / (n + worth)
 */
export function releaseWorth(own: TimedThrows, curve: ReleaseBelief, others: readonly TimedThrows[]): number {
  if (own.throws === 0) return curve.worth;
  const belief = beliefOnGrid({ median: curve.worth, spread: SPREAD });
  const league = weighed(belief, leagueEvidence(curve, others));
  const prior = belief.map(
    (chance, i) => NONE_OF_THEIR_KIND * chance + (1 - NONE_OF_THEIR_KIND) * (league[i] as number),
  );
  const variances = WORTHS.map((worth) => curve.sigma ** 2 * (1 / worth + 1 / own.throws));
  const chances = weighed(
    prior,
    variances.map((variance) => logNormal(own.mean - curve.mu, variance)),
  );
  const weight = chances.reduce(
    (sum, chance, i) => sum + (chance * own.throws) / (own.throws + (WORTHS[i] as number)),
    0,
  );
  return (own.throws * (1 - weight)) / weight;
}

/** Each offense against the mean of the others, which is known from their throws and from how many they are. */
function leagueEvidence({ sigma }: ReleaseBelief, others: readonly TimedThrows[]): Float64Array {
  const timed = others.filter(({ throws }) => throws > 0);
  const evidence = new Float64Array(WORTHS.length);
  for (const one of timed) {
    const rest = timed.filter((other) => other !== one);
    const throws = rest.reduce((sum, other) => sum + other.throws, 0);
    if (throws === 0) continue;
    const mean = rest.reduce((sum, other) => sum + other.throws * other.mean, 0) / throws;
    for (let i = 0; i < evidence.length; i++) {
      const offenses = (1 + 1 / rest.length) / (WORTHS[i] as number);
      const variance = sigma ** 2 * (offenses + 1 / one.throws + 1 / throws);
      evidence[i] = (evidence[i] as number) + logNormal(one.mean - mean, variance);
    }
  }
  return evidence;
}

/** Logarithm of a normal density, less a constant. */
function logNormal(off: number, variance: number): number {
  return -(off ** 2 / variance + Math.log(variance)) / 2;
}
