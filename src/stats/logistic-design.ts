import { StatsInputError } from './errors.ts';

/** The explaining variables of a logistic regression, one line per observation. */
export type LogisticDesign =
  | {
      readonly kind: 'dense';
      readonly features: number;
      /** Observation by observation, `features` numbers each. */
      readonly values: Float64Array;
    }
  | {
      readonly kind: 'one-hot';
      readonly features: number;
      /** Per observation the numbers, 0 to `features` - 1, of the features that are 1; all others are 0. */
      readonly rows: readonly Uint32Array[];
    };

/** A checked design, laid out for fast passes over its observations. */
export interface CompiledDesign {
  readonly observations: number;
  readonly features: number;
  /** Observation i has its entries from `starts[i]` up to before `starts[i + 1]`. */
  readonly starts: Uint32Array;
  /** The feature of each entry. */
  readonly indices: Uint32Array;
  /** The value of each entry; null when all are 1. */
  readonly values: Float64Array | null;
}

/**
 * Checks a design and lays it out observation by observation.
 *
 * @throws StatsInputError when a feature number is out of range, a value is not finite, or the length of a
 * dense design is not a multiple of its features
 */
export function compileDesign(design: LogisticDesign): CompiledDesign {
  switch (design.kind) {
    case 'dense':
      return fromDense(design.values, design.features);
    case 'one-hot':
      return fromOneHot(design.rows, design.features);
    default:
      return design satisfies never;
  }
}

function fromDense(values: Float64Array, features: number): CompiledDesign {
  const observations = values.length / features;
  if (!Number.isInteger(observations)) {
    throw new StatsInputError(`a dense design of ${features} features cannot have ${values.length} values`);
  }
  const wrong = values.find((x) => !Number.isFinite(x));
  if (wrong !== undefined) throw new StatsInputError(`a design requires finite values, got ${wrong}`);
  return {
    observations,
    features,
    starts: Uint32Array.from({ length: observations + 1 }, (_, i) => i * features),
    indices: Uint32Array.from({ length: values.length }, (_, k) => k % features),
    values,
  };
}

function fromOneHot(rows: readonly Uint32Array[], features: number): CompiledDesign {
  const starts = new Uint32Array(rows.length + 1);
  rows.forEach((row, i) => {
    starts[i + 1] = (starts[i] as number) + row.length;
  });
  const indices = new Uint32Array(starts.at(-1) ?? 0);
  rows.forEach((row, i) => {
    indices.set(row, starts[i]);
  });
  const wrong = indices.find((feature) => feature >= features);
  if (wrong !== undefined) throw new StatsInputError(`a design of ${features} features has no feature ${wrong}`);
  return { observations: rows.length, features, starts, indices, values: null };
}

/**
 * The linear scores of every observation: offsets plus features times coefficients.
 *
 * @param design - the observations
 * @param coefficients - feature by feature, one number per score
 * @param scores - observation by observation, one place per score; holds the offsets on entry and the scores after
 */
export function addScores(design: CompiledDesign, coefficients: Float64Array, scores: Float64Array): void {
  const { observations, starts, indices, values } = design;
  const width = coefficients.length / design.features;
  for (let i = 0; i < observations; i += 1) {
    const to = i * width;
    const end = starts[i + 1] as number;
    for (let k = starts[i] as number; k < end; k += 1) {
      const from = (indices[k] as number) * width;
      const x = values === null ? 1 : (values[k] as number);
      for (let c = 0; c < width; c += 1) {
        scores[to + c] = (scores[to + c] as number) + x * (coefficients[from + c] as number);
      }
    }
  }
}

/**
 * The transpose of {@link addScores}: adds to each coefficient the residuals of the observations it acts on.
 *
 * @param design - the observations
 * @param residuals - observation by observation, one number per score
 * @param gradient - feature by feature, one place per score; added to
 */
export function addGradient(design: CompiledDesign, residuals: Float64Array, gradient: Float64Array): void {
  const { observations, starts, indices, values } = design;
  const width = gradient.length / design.features;
  for (let i = 0; i < observations; i += 1) {
    const from = i * width;
    const end = starts[i + 1] as number;
    for (let k = starts[i] as number; k < end; k += 1) {
      const to = (indices[k] as number) * width;
      const x = values === null ? 1 : (values[k] as number);
      for (let c = 0; c < width; c += 1) {
        gradient[to + c] = (gradient[to + c] as number) + x * (residuals[from + c] as number);
      }
    }
  }
}
