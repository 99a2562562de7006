import { type AdjustedDifference, type Measured, OPEN_DIFFERENCES, type OpenFamily } from './open-data-table.ts';

/** Effects of several groups taken together: their precision-weighted mean and the variance between the true effects. */
export interface PooledEffects {
  readonly mean: number;
  readonly between: number;
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
  return { mean, between: Math.max(0, (spread - (effects.length - 1)) / scale) };
}

/** Figures of the adjusted differences that can be trusted or not, each by itself. */
export type TrustedFigure = keyof AdjustedDifference;

/**
 * How far a family's own figure is believed against that of all pressures together, 0 to 1: the variance between
 * families over itself plus the family's error squared. Losses, success and explosives differ between families by more
 * than chance; takeaways do not at all.
 *
 * @see Efron and Morris 1975, Journal of the American Statistical Association 70:311
 */
export function familyTrust(family: OpenFamily, figure: TrustedFigure): number {
  if (family === 'base') return 1;
  const { between } = POOLED[figure];
  return between / (between + OPEN_DIFFERENCES[family][figure].error ** 2);
}

/** A family's difference from four rushers, pulled to that of all pressures as far as its own is not to be believed. */
export function trustedDifference(family: OpenFamily, figure: TrustedFigure): number {
  if (family === 'base') return 0;
  const { mean } = POOLED[figure];
  return mean + familyTrust(family, figure) * (OPEN_DIFFERENCES[family][figure].value - mean);
}

/** The difference of all pressures together from four rushers. */
export function pooledDifference(figure: TrustedFigure): number {
  return POOLED[figure].mean;
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

function pooledIn(figure: TrustedFigure): PooledEffects {
  return pooledEffects(Object.values(OPEN_DIFFERENCES).map((difference) => difference[figure]));
}

const POOLED: Readonly<Record<TrustedFigure, PooledEffects>> = {
  points: pooledIn('points'),
  success: pooledIn('success'),
  loss: pooledIn('loss'),
  explosive: pooledIn('explosive'),
  takeaway: pooledIn('takeaway'),
};
