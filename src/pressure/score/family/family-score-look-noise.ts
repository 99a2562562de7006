import { ANSWERS, FAMILIES } from '../../../game/vocabulary.ts';
import { createRandom } from '../../../stats/random.ts';
import { LOOK_PARTS, LOOK_REACHES, type LookReach, reaches } from '../../evidence/judgement-look-parts.ts';
import { meanShares } from '../../evidence/judgement-looks.ts';
import { sheetMark } from '../../evidence/judgement-sheet.ts';
import type { ScoreModel } from './family-score-model.ts';

/** How far drawn looks' marks are from those of the mean looks, by reach, family and draw. */
export type LookNoise = Readonly<Record<LookReach, readonly Float64Array[]>>;

/**
 * Draws the looks over all their snaps and gives what that moves each family's marks by. How a single situation's looks
 * differ from the whole is in the means; its own chance is not drawn apart.
 */
export function lookNoise({ looks, seed }: ScoreModel, count: number): LookNoise {
  const random = createRandom(`${seed}/looks`);
  const noise = { set: familyArrays(count), pass: familyArrays(count), held: familyArrays(count) };
  LOOK_PARTS.forEach((_, p) => {
    const alphas = looks.all[p] as Float64Array;
    const means = meanShares(alphas);
    const weights = LOOK_REACHES.map((reach) => ({ reach, weights: classWeights(p, reach) })).filter((one) =>
      one.weights.some((own) => own.some((weight) => weight !== 0)),
    );
    const shares = random.dirichlets(alphas, new Float64Array(alphas.length * count));
    for (let i = 0; i < shares.length; i++) shares[i] = (shares[i] as number) - (means[i % means.length] as number);
    for (const { reach, weights: own } of weights) {
      for (let f = 0; f < own.length; f++) addMarks(noise[reach][f] as Float64Array, shares, own[f] as Float64Array);
    }
  });
  return noise;
}

/** The noise that bears on each answer, by answer and family: what reaches it, summed once. */
export function answerNoise(noise: LookNoise): readonly (readonly Float64Array[])[] {
  const held = FAMILIES.map((_, f) => summed([noise.set[f], noise.pass[f], noise.held[f]]));
  const pass = FAMILIES.map((_, f) => summed([noise.set[f], noise.pass[f]]));
  return ANSWERS.map((answer) => {
    if (reaches('held', answer)) return held;
    return reaches('pass', answer) ? pass : noise.set;
  });
}

function summed(arrays: readonly (Float64Array | undefined)[]): Float64Array {
  const sum = new Float64Array(arrays[0]?.length ?? 0);
  for (const array of arrays) if (array) addTo(sum, array);
  return sum;
}

function addTo(sum: Float64Array, more: Float64Array): void {
  for (let i = 0; i < sum.length; i++) sum[i] = (sum[i] as number) + (more[i] as number);
}

function familyArrays(count: number): Float64Array[] {
  return FAMILIES.map(() => new Float64Array(count));
}

/** Marks of each family for one whole share of each class of a part, of the rows of one reach. */
function classWeights(p: number, reach: LookReach): readonly Float64Array[] {
  const part = LOOK_PARTS[p];
  return FAMILIES.map((family) => {
    const weights = new Float64Array(part?.typical.length ?? 0);
    for (const row of part?.rows ?? []) {
      if (row.reach === reach) weights[row.index] = sheetMark(row.row, family) / row.lot;
    }
    return weights;
  });
}

/** Adds the marks of every draw of a part's shares; nothing is added where all its marks are 0. */
function addMarks(noise: Float64Array, shares: Float64Array, weights: Float64Array): void {
  if (weights.every((weight) => weight === 0)) return;
  for (let draw = 0, at = 0; draw < noise.length; draw++) {
    let marks = 0;
    for (let k = 0; k < weights.length; k++, at++) marks += (weights[k] as number) * (shares[at] as number);
    noise[draw] = (noise[draw] as number) + marks;
  }
}
