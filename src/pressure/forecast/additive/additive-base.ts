import { fitRidgeLogistic } from '../../../stats/logistic.ts';
import type { TargetCodes } from '../chain-tally.ts';
import type { AdditiveColumn } from './additive-columns.ts';
import { type AdditiveDesign, additivePenalties } from './additive-design.ts';

/** What any offense does, as scores: log odds of class 1 with two classes, else one number a class. */
export interface AdditiveBase {
  /** Numbers a snap. */
  readonly width: number;
  /** The scores of some snaps, snap by snap. */
  readonly scoresOf: (rows: ArrayLike<number>) => Float64Array;
}

/** What a base is fitted to. */
export interface AdditiveBaseTask {
  readonly design: AdditiveDesign;
  readonly target: TargetCodes;
  /** Snaps of other offenses on which the target was charted. */
  readonly rows: readonly number[];
  readonly scale: number;
  readonly uncharted: ReadonlySet<AdditiveColumn>;
}

/** Steps of the search: on 34,000 snaps 20 forecast as well as 60 (measured to .0003 of log loss). */
const MOST_STEPS = 20;

/**
 * Fits what any offense does. A combination of levels that the archive never showed gets what its family says on
 * average, so that a blank or an unheard-of formation costs no more than the family's own knowledge.
 */
export function fitAdditiveBase({ design, target, rows, scale, uncharted }: AdditiveBaseTask): AdditiveBase {
  const { coefficients } = fitRidgeLogistic({
    design: { kind: 'one-hot', features: design.features, rows: rows.map((row) => design.rows[row] as Uint32Array) },
    outcomes: rows.map((row) => target.codes[row] as number),
    classes: target.classes,
    penalties: additivePenalties(design, scale, uncharted),
    maxIterations: MOST_STEPS,
  });
  const width = coefficients.length / design.features;
  fillUnseen(design, coefficients, rows);
  return { width, scoresOf: (wanted) => scoresOf(design, coefficients, wanted) };
}

/** Prior count of each class (Jeffreys). */
const CLASS_PRIOR = 0.5;

/**
 * A base that knows only how often each class came on the given snaps.
 *
 * @param rows - snaps on which the target was charted; of none, every class is as likely as any other
 */
export function plainBase({ codes, classes }: TargetCodes, rows: readonly number[]): AdditiveBase {
  const counts = new Float64Array(classes).fill(CLASS_PRIOR);
  for (const row of rows) counts[codes[row] as number] = (counts[codes[row] as number] as number) + 1;
  const logs = counts.map((count) => Math.log(count));
  const scores = classes === 2 ? Float64Array.of((logs[1] as number) - (logs[0] as number)) : logs;
  const scoresOf = (wanted: ArrayLike<number>) =>
    Float64Array.from({ length: wanted.length * scores.length }, (_, i) => scores[i % scores.length] as number);
  return { width: scores.length, scoresOf };
}

function fillUnseen(design: AdditiveDesign, coefficients: Float64Array, rows: readonly number[]): void {
  const width = coefficients.length / design.features;
  const seen = new Uint32Array(design.features);
  for (const row of rows) {
    for (const feature of design.rows[row] as Uint32Array) seen[feature] = (seen[feature] as number) + 1;
  }
  const sums = new Float64Array(design.families.length * width);
  eachCoefficient(design, width, (feature, from, to) => {
    const times = (seen[feature] as number) / rows.length;
    for (let c = 0; c < width; c++)
      sums[to + c] = (sums[to + c] as number) + times * (coefficients[from + c] as number);
  });
  eachCoefficient(design, width, (feature, from, to) => {
    if (seen[feature] === 0) coefficients.set(sums.subarray(to, to + width), from);
  });
}

function eachCoefficient(
  { familyOf }: AdditiveDesign,
  width: number,
  visit: (feature: number, from: number, to: number) => void,
): void {
  familyOf.forEach((family, feature) => {
    visit(feature, feature * width, family * width);
  });
}

function scoresOf(design: AdditiveDesign, coefficients: Float64Array, rows: ArrayLike<number>): Float64Array {
  const width = coefficients.length / design.features;
  const scores = new Float64Array(rows.length * width);
  for (let i = 0; i < rows.length; i++) {
    for (const feature of design.rows[rows[i] as number] as Uint32Array) {
      for (let c = 0; c < width; c++) {
        scores[i * width + c] = (scores[i * width + c] as number) + (coefficients[feature * width + c] as number);
      }
    }
  }
  return scores;
}
