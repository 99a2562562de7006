import { StatsInputError } from './errors.ts';
import { addGradient, addScores, type CompiledDesign, compileDesign, type LogisticDesign } from './logistic-design.ts';
import { minimize, type Objective } from './minimize.ts';
import { requireNonNegative } from './require-counts.ts';
import { lossAndSlopes } from './softmax.ts';

/** What a ridge logistic regression is fitted to. */
export interface LogisticTask {
  readonly design: LogisticDesign;
  /** The class of each observation, 0 to `classes` - 1. */
  readonly outcomes: ArrayLike<number>;
  /** Number of classes, at least 2. With 2 there is one score, for class 1; with more there is one score per class. */
  readonly classes: number;
  /** Penalty of each feature, at least 0: half of it times the sum of its squared coefficients joins the loss. */
  readonly penalties: ArrayLike<number>;
  /** Known part of the scores, observation by observation, one number per score; 0 when absent. */
  readonly offsets?: Float64Array | undefined;
  /** Weight of each observation, at least 0; 1 when absent. */
  readonly weights?: ArrayLike<number> | undefined;
  /** Largest slope left, relative to the loss; 1e-8 when absent. */
  readonly tolerance?: number | undefined;
  /** 1000 when absent. */
  readonly maxIterations?: number | undefined;
}

/** A fitted ridge logistic regression. */
export interface LogisticFit {
  readonly classes: number;
  readonly features: number;
  /** Feature by feature: one number for 2 classes (log odds of class 1), else one per class (summing to 0). */
  readonly coefficients: Float64Array;
  /** Log loss summed over observations, in nats, plus the penalty. */
  readonly loss: number;
  readonly iterations: number;
  /** False when the search stopped early, as it does when an unpenalized fit has no finite optimum. */
  readonly converged: boolean;
}

/**
 * Fits a binary or multinomial logistic regression with a ridge penalty of its own for each feature.
 *
 * @throws StatsInputError when lengths do not agree, or a class, penalty, weight or design value is impossible
 * @see Hoerl and Kennard 1970; le Cessie and van Houwelingen 1992, Applied Statistics 41:191
 */
export function fitRidgeLogistic(task: LogisticTask): LogisticFit {
  const problem = checked(task);
  const { design, width } = problem;
  const { point, value, iterations, converged } = minimize({
    objective: penalizedLoss(problem),
    start: new Float64Array(design.features * width),
    curvature: curvatureAtStart(problem),
    tolerance: task.tolerance ?? 1e-8,
    maxIterations: task.maxIterations,
  });
  return { classes: task.classes, features: design.features, coefficients: point, loss: value, iterations, converged };
}

interface Problem {
  readonly design: CompiledDesign;
  readonly outcomes: ArrayLike<number>;
  readonly classes: number;
  /** Scores per observation. */
  readonly width: number;
  readonly penalties: ArrayLike<number>;
  readonly offsets: Float64Array;
  readonly weights: Float64Array;
}

function checked({ design, outcomes, classes, penalties, offsets, weights }: LogisticTask): Problem {
  if (!(Number.isInteger(classes) && classes >= 2)) {
    throw new StatsInputError(`fitRidgeLogistic requires at least 2 classes, got ${classes}`);
  }
  const compiled = compileDesign(design);
  const { observations, features } = compiled;
  const width = classes === 2 ? 1 : classes;
  requireLength('outcomes', outcomes, observations);
  requireLength('penalties', penalties, features);
  if (offsets) requireLength('offsets', offsets, observations * width);
  if (weights) requireLength('weights', weights, observations);
  requireEach(outcomes, (y) => requireClass(y, classes));
  requireEach(penalties, (penalty) => requireNonNegative(penalty, 'a penalty'));
  requireEach(weights ?? [], (weight) => requireNonNegative(weight, 'a weight'));
  return {
    design: compiled,
    outcomes,
    classes,
    width,
    penalties,
    offsets: offsets ?? new Float64Array(observations * width),
    weights: weights ? Float64Array.from(weights) : new Float64Array(observations).fill(1),
  };
}

function requireLength(what: string, list: ArrayLike<number>, length: number): void {
  if (list.length !== length) {
    throw new StatsInputError(`fitRidgeLogistic requires ${length} ${what}, got ${list.length}`);
  }
}

function requireEach(list: ArrayLike<number>, requirement: (value: number) => void): void {
  for (let i = 0; i < list.length; i += 1) requirement(list[i] as number);
}

function requireClass(outcome: number, classes: number): void {
  if (!(Number.isInteger(outcome) && outcome >= 0 && outcome < classes)) {
    throw new StatsInputError(`an outcome must be a class from 0 to ${classes - 1}, got ${outcome}`);
  }
}

function penalizedLoss(problem: Problem): Objective {
  const { design, width, offsets } = problem;
  const scores = new Float64Array(offsets.length);
  return (coefficients, gradient) => {
    scores.set(offsets);
    addScores(design, coefficients, scores);
    const loss = lossAndSlopes(scores, width, problem);
    gradient.fill(0);
    addGradient(design, scores, gradient);
    return loss + addPenalty(problem, coefficients, gradient);
  };
}

function addPenalty({ penalties, width }: Problem, coefficients: Float64Array, gradient: Float64Array): number {
  let penalty = 0;
  for (let k = 0; k < coefficients.length; k += 1) {
    const pull = (penalties[Math.floor(k / width)] as number) * (coefficients[k] as number);
    penalty += 0.5 * pull * (coefficients[k] as number);
    gradient[k] = (gradient[k] as number) + pull;
  }
  return penalty;
}

/** Second derivative of each coefficient when every class is equally likely. */
function curvatureAtStart({ design, classes, width, penalties, weights }: Problem): Float64Array {
  const { observations, starts, indices, values } = design;
  const spread = (1 / classes) * (1 - 1 / classes);
  const byFeature = new Float64Array(design.features);
  for (let i = 0; i < observations; i += 1) {
    for (let k = starts[i] as number; k < (starts[i + 1] as number); k += 1) {
      const j = indices[k] as number;
      byFeature[j] = (byFeature[j] as number) + (weights[i] as number) * spread * (values?.[k] ?? 1) ** 2;
    }
  }
  return Float64Array.from({ length: byFeature.length * width }, (_, k) => {
    const j = Math.floor(k / width);
    return (byFeature[j] as number) + (penalties[j] as number) || 1;
  });
}
