import { StatsInputError } from './errors.ts';
import { fitRidgeLogistic } from './logistic.ts';
import type { LogisticDesign } from './logistic-design.ts';

/** Probabilities are moved this far inside 0 and 1 before a logarithm is taken, so that no loss is infinite. */
export const CLIP = 1e-15;

/**
 * Mean log loss of forecasts over several classes, in nats.
 *
 * @param forecasts - per observation one probability per class, summing to 1
 * @param outcomes - the class that came, from 0
 * @param clip - probabilities are kept at least this far from 0 and 1
 * @throws StatsInputError when there is not a forecast, the lengths differ or a value is impossible
 */
export function multiclassLogLoss(
  forecasts: readonly ArrayLike<number>[],
  outcomes: readonly number[],
  clip = CLIP,
): number {
  requireClassForecasts(forecasts, outcomes);
  return meanOver(forecasts, (row, i) => -Math.log(clipped(row[outcomes[i] as number] as number, clip)));
}

/**
 * Brier's score over several classes in its sum form, 0 to 2.
 *
 * @param forecasts - per observation one probability per class, summing to 1
 * @param outcomes - the class that came, from 0
 * @throws StatsInputError when there is not a forecast, the lengths differ or a value is impossible
 * @see Brier 1950, Monthly Weather Review 78:1
 */
export function multiclassBrier(forecasts: readonly ArrayLike<number>[], outcomes: readonly number[]): number {
  requireClassForecasts(forecasts, outcomes);
  return meanOver(forecasts, (row, i) => {
    let sum = 0;
    for (let c = 0; c < row.length; c += 1) sum += ((row[c] as number) - (outcomes[i] === c ? 1 : 0)) ** 2;
    return sum;
  });
}

/** How forecasts of a yes-or-no outcome should be bent to fit what happened. Null where no finite answer exists. */
export interface Calibration {
  /** Intercept of the outcome's logit on the forecast's logit; 0 is ideal. */
  readonly intercept: number | null;
  /** Slope of the same line; 1 is ideal, below 1 the forecasts are too bold. */
  readonly slope: number | null;
  /** Shift of the logit alone, slope held at 1; 0 is ideal, above 0 the forecasts are too low. */
  readonly inTheLarge: number | null;
}

/**
 * Recalibration line of forecasts of a yes-or-no outcome.
 *
 * @throws StatsInputError when there is not a forecast, the lengths differ or a value is impossible
 * @see Cox 1958, Biometrika 45:562
 */
export function calibration(forecasts: readonly number[], outcomes: readonly number[], clip = CLIP): Calibration {
  requirePairs(forecasts, outcomes);
  const logits = forecasts.map((p) => Math.log(clipped(p, clip) / clipped(1 - p, clip)));
  const line = separated(logits, outcomes) ? null : fitted(logits, outcomes);
  const shift = new Set(outcomes).size < 2 ? null : fittedShift(logits, outcomes);
  return { intercept: line?.[0] ?? null, slope: line?.[1] ?? null, inTheLarge: shift };
}

/** Whether a cut on the logit parts the outcomes, or all logits are one: then no finite slope fits best. */
function separated(logits: readonly number[], outcomes: readonly number[]): boolean {
  const no = rangeOf(logits, (i) => outcomes[i] === 0);
  const yes = rangeOf(logits, (i) => outcomes[i] === 1);
  return no.high <= yes.low || yes.high <= no.low;
}

/** Lowest and highest of the chosen numbers; of none, a range that lies below and above everything. */
function rangeOf(numbers: readonly number[], chosen: (i: number) => boolean) {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  numbers.forEach((number, i) => {
    if (!chosen(i)) return;
    low = Math.min(low, number);
    high = Math.max(high, number);
  });
  return { low, high };
}

function fitted(logits: readonly number[], outcomes: readonly number[]): Float64Array | null {
  const design: LogisticDesign = {
    kind: 'dense',
    features: 2,
    values: Float64Array.from(logits.flatMap((logit) => [1, logit])),
  };
  const fit = fitRidgeLogistic({ design, outcomes, classes: 2, penalties: [0, 0], tolerance: TIGHT });
  return fit.converged ? fit.coefficients : null;
}

function fittedShift(logits: readonly number[], outcomes: readonly number[]): number | null {
  const design: LogisticDesign = { kind: 'dense', features: 1, values: new Float64Array(logits.length).fill(1) };
  const offsets = Float64Array.from(logits);
  const fit = fitRidgeLogistic({ design, outcomes, classes: 2, penalties: [0], offsets, tolerance: TIGHT });
  return fit.converged ? (fit.coefficients[0] ?? null) : null;
}

const TIGHT = 1e-10; // relative slope left: coefficients are then right to about nine digits

function clipped(p: number, clip: number): number {
  return Math.min(1 - clip, Math.max(clip, p));
}

function meanOver<T>(items: readonly T[], score: (item: T, i: number) => number): number {
  return items.reduce((sum, item, i) => sum + score(item, i), 0) / items.length;
}

function requirePairs(forecasts: readonly number[], outcomes: readonly number[]): void {
  requireSameLength(forecasts, outcomes);
  forecasts.forEach(requireProbability);
  const wrong = outcomes.find((y) => y !== 0 && y !== 1);
  if (wrong !== undefined) throw new StatsInputError(`an outcome must be 0 or 1, got ${wrong}`);
}

function requireClassForecasts(forecasts: readonly ArrayLike<number>[], outcomes: readonly number[]): void {
  requireSameLength(forecasts, outcomes);
  forecasts.forEach((row, i) => {
    Array.from(row).forEach(requireProbability);
    const total = Array.from(row).reduce((a, b) => a + b, 0);
    if (Math.abs(total - 1) > SUM_SLACK) throw new StatsInputError(`a forecast must sum to 1, got ${total}`);
    const outcome = outcomes[i] as number;
    if (!(Number.isInteger(outcome) && outcome >= 0 && outcome < row.length)) {
      throw new StatsInputError(`an outcome must be a class from 0 to ${row.length - 1}, got ${outcome}`);
    }
  });
}

const SUM_SLACK = 1e-3; // judgment: forecasts written with three digits still pass

function requireSameLength(forecasts: readonly unknown[], outcomes: readonly unknown[]): void {
  if (forecasts.length === 0) throw new StatsInputError('a score requires at least one forecast');
  if (forecasts.length !== outcomes.length) {
    throw new StatsInputError(
      `a score requires one outcome per forecast, got ${outcomes.length} for ${forecasts.length}`,
    );
  }
}

function requireProbability(p: number): void {
  if (!(p >= 0 && p <= 1)) throw new StatsInputError(`a forecast must lie between 0 and 1, got ${p}`);
}
