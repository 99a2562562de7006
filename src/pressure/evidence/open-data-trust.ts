import { type Measured, OPEN_DIFFERENCES } from './open-data-table.ts';

/** Effects of several groups taken together: their precision-weighted mean and the variance between the true effects. */
export interface PooledEffects {
  readonly mean: number;
  readonly between: number;
  /** Standard error of the mean over all groups there could be. */
  readonly error: number;
}

/**
 * The mean effect of several groups and the variance of true effects between them, beyond what their standard errors
 * explain; 0 when they explain it all.
 *
 * @param effects - one per group, at least two, errors above 0
 * @see DerSimonian and Laird 1986, Controlled Clinical Trials 7:177, the moment estimator
 */
export function pooledEffects(effects: readonly Measured[]): PooledEffects {
  const weights = effects.map(({ error }) => 1 / (error * error));
  const total = sumOf(weights);
  const mean = sumOf(weights.map((weight, i) => weight * (effects[i]?.value ?? 0))) / total;
  const spread = sumOf(weights.map((weight, i) => weight * ((effects[i]?.value ?? 0) - mean) ** 2));
  const scale = total - sumOf(weights.map((weight) => weight * weight)) / total;
  const between = Math.max(0, (spread - (effects.length - 1)) / scale);
  const precision = sumOf(effects.map(({ error }) => 1 / (error * error + between)));
  return { mean, between, error: 1 / Math.sqrt(precision) };
}

/**
 * One group's effect pulled to the mean of all as far as its own figure is not to be believed, with what is then left
 * of its error; the mean's own error is not in it.
 *
 * @see Efron and Morris 1975, Journal of the American Statistical Association 70:311
 */
export function shrunkEffect({ value, error }: Measured, { mean, between }: PooledEffects): Measured {
  const trust = between / (between + error * error);
  return { value: mean + trust * (value - mean), error: Math.sqrt(between * (1 - trust)) };
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

/** How much more often pressures are explosive than four rushers, over all families. */
export const EXPLOSIVES_POOLED = pooledEffects(Object.values(OPEN_DIFFERENCES).map(({ explosive }) => explosive));
