import { ANSWERS, FAMILIES } from '../../../ingest/vocabulary.ts';
import { createRandom } from '../../../stats/random.ts';
import { LOOK_PARTS, LOOK_REACHES, type LookReach, reaches } from '../../evidence/judgement-look-parts.ts';
import { meanShares } from '../../evidence/judgement-looks.ts';
import { sheetMark } from '../../evidence/judgement-sheet.ts';
import type { ScoreModel } from './family-score-model.ts';
import { drawShares } from './family-score-shares.ts';

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
    const shares = new Float64Array(alphas.length);
    for (let i = 0; i < count; i++) {
      drawShares(random, alphas, shares);
      for (let k = 0; k < shares.length; k++) shares[k] = (shares[k] as number) - (means[k] as number);
      for (const { reach, weights: own } of weights) addMarks(noise[reach], i, { shares, weights: own });
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
  for (const array of arrays) {
    array?.forEach((value, i) => {
      sum[i] = (sum[i] as number) + value;
    });
  }
  return sum;
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

function addMarks(
  noise: readonly Float64Array[],
  draw: number,
  { shares, weights }: { shares: Float64Array; weights: readonly Float64Array[] },
): void {
  for (let f = 0; f < noise.length; f++) {
    const own = weights[f] as Float64Array;
    let marks = 0;
    for (let k = 0; k < shares.length; k++) marks += (own[k] as number) * (shares[k] as number);
    const into = noise[f] as Float64Array;
    into[draw] = (into[draw] as number) + marks;
  }
}
