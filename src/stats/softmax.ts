/** Observed classes with their weights, one of each per observation. */
export interface WeightedOutcomes {
  /** The class that came, from 0. */
  readonly outcomes: ArrayLike<number>;
  readonly weights: Float64Array;
}

/**
 * The summed log loss of observations; their scores are replaced by the slope of the loss along them.
 *
 * @param scores - observation by observation, `width` numbers each; overwritten
 * @param width - 1 for the log odds of class 1, else the number of classes
 * @returns loss in nats
 */
export function lossAndSlopes(scores: Float64Array, width: number, observed: WeightedOutcomes): number {
  return width === 1 ? binaryLoss(scores, observed) : multinomialLoss(scores, width, observed);
}

function binaryLoss(scores: Float64Array, { outcomes, weights }: WeightedOutcomes): number {
  let loss = 0;
  for (let i = 0; i < scores.length; i += 1) {
    const score = scores[i] as number;
    const weight = weights[i] as number;
    const outcome = outcomes[i] as number;
    const small = Math.exp(-Math.abs(score));
    const probability = score >= 0 ? 1 / (1 + small) : small / (1 + small);
    scores[i] = weight * (probability - outcome);
    loss += weight * (Math.log1p(small) + Math.max(score, 0) - outcome * score);
  }
  return loss;
}

function multinomialLoss(scores: Float64Array, width: number, { outcomes, weights }: WeightedOutcomes): number {
  let loss = 0;
  for (let i = 0, from = 0; from < scores.length; i += 1, from += width) {
    const weight = weights[i] as number;
    const came = from + (outcomes[i] as number);
    const chosen = scores[came] as number;
    const top = largest(scores, from, width);
    const total = exponentiate(scores, { from, width, top });
    loss += weight * (Math.log(total) + top - chosen);
    const scale = weight / total;
    for (let k = from; k < from + width; k += 1) scores[k] = scale * (scores[k] as number);
    scores[came] = (scores[came] as number) - weight;
  }
  return loss;
}

function largest(scores: Float64Array, from: number, width: number): number {
  let top = Number.NEGATIVE_INFINITY;
  for (let k = from; k < from + width; k += 1) {
    if ((scores[k] as number) > top) top = scores[k] as number;
  }
  return top;
}

interface Row {
  readonly from: number;
  readonly width: number;
  readonly top: number;
}

/** Replaces one observation's scores by their exponentials, scaled so that the largest is 1; returns their sum. */
function exponentiate(scores: Float64Array, { from, width, top }: Row): number {
  let total = 0;
  for (let k = from; k < from + width; k += 1) {
    const weight = Math.exp((scores[k] as number) - top);
    scores[k] = weight;
    total += weight;
  }
  return total;
}
