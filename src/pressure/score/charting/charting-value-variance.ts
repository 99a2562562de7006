import { ANSWERS, FAMILIES } from '../../../game/vocabulary.ts';
import { cellIndex } from '../../evidence/evidence-cell.ts';
import { LOSSES_PER_RUSHER_HOME } from '../../evidence/evidence-race.ts';
import { LOOK_PARTS, type LookPart, type LookReach, reaches } from '../../evidence/judgement-look-parts.ts';
import { meanShares } from '../../evidence/judgement-looks.ts';
import { sheetMark } from '../../evidence/judgement-sheet.ts';
import type { ScoreModel } from '../family/family-score-model.ts';
import { SNAPS_PER_SCORE } from '../family/family-score-points.ts';
import type { ScoredSituation, ScoredWeek } from '../family/family-score-week.ts';
import type { ValuedColumn } from './charting-value-column.ts';

/** The model, and how many snaps of the next game a column would be charted on. */
export interface NarrowingInput {
  readonly model: ScoreModel;
  readonly newSnaps: number;
}

/**
 * By family, the share by which the overall interval would narrow if a column were charted on that many more snaps: 1
 * less the root of what would be left of the variance.
 */
export function narrowingOf(column: ValuedColumn, week: ScoredWeek, input: NarrowingInput): Float64Array {
  return Float64Array.from(FAMILIES, (_, f) => {
    const total = variance(week.all.points[f] as Float64Array);
    if (total === 0) return 0;
    const saved = Math.min(total, savedVariance(column, week, { ...input, f }));
    return 1 - Math.sqrt(1 - saved / total);
  });
}

/** The variance of a weighted sum of Dirichlet shares. */
export function dirichletVariance(alphas: ArrayLike<number>, weights: ArrayLike<number>): number {
  const means = meanShares(alphas);
  const concentration = Array.from(alphas).reduce((sum, alpha) => sum + alpha, 0);
  const mean = means.reduce((sum, share, i) => sum + share * (weights[i] ?? 0), 0);
  const square = means.reduce((sum, share, i) => sum + share * (weights[i] ?? 0) ** 2, 0);
  return Math.max(0, square - mean * mean) / (concentration + 1);
}

interface FamilyInput extends NarrowingInput {
  readonly f: number;
}

function savedVariance(column: ValuedColumn, week: ScoredWeek, input: FamilyInput): number {
  if (column === 'play_kind') return answerVariance(week, input);
  if (column === 'time_to_throw') return releaseVariance(week.all, input);
  const parts = LOOK_PARTS.map((part, i) => ({ part, i })).filter(({ part }) => part.column === column);
  return parts.reduce((sum, { part, i }) => {
    const alphas = week.all.looks[i] as Float64Array;
    const own = dirichletVariance(alphas, partWeights(week.all, part, input.f));
    return sum + own * learned(alphas.reduce((total, alpha) => total + alpha, 0) + 1, input.newSnaps);
  }, 0);
}

/** The share of a variance that goes when `added` snaps join what is worth `held`. */
function learned(held: number, added: number): number {
  return added / (held + added);
}

function answerVariance({ situations }: ScoredWeek, { model, newSnaps, f }: FamilyInput): number {
  return situations.reduce((sum, { saved }, s) => {
    const alphas = model.situations[s]?.alphas ?? new Float64Array();
    const weight = model.weights[s] ?? 0;
    const points = ANSWERS.map((_, a) => SNAPS_PER_SCORE * (saved[cellIndex(f, a)] ?? 0));
    const held = alphas.reduce((total, alpha) => total + alpha, 0) + 1;
    return sum + weight * weight * dirichletVariance(alphas, points) * learned(held, weight * newSnaps);
  }, 0);
}

/** Timed throws the published release curve is worth, for this estimate alone; judgement. */
const CURVE_WORTH = 10;

function releaseVariance(all: ScoredSituation, { model, newSnaps, f }: FamilyInput): number {
  return ANSWERS.reduce((sum, _, a) => {
    const cell = cellIndex(f, a);
    const share = all.shares[a] ?? 0;
    const points =
      SNAPS_PER_SCORE * share * LOSSES_PER_RUSHER_HOME * (model.race.spread[cell] ?? 0) * (all.perLoss[a] ?? 0);
    const held = CURVE_WORTH + (model.race.timed[cell] ?? 0);
    return sum + points * points * learned(held, share * newSnaps);
  }, 0);
}

/** Points per ten snaps of one whole share of each class of a part. */
function partWeights({ shares, perMark }: ScoredSituation, part: LookPart, f: number): Float64Array {
  const reached = (reach: LookReach) =>
    ANSWERS.reduce((sum, answer, a) => sum + (reaches(reach, answer) ? (shares[a] ?? 0) * (perMark[a] ?? 0) : 0), 0);
  const weights = new Float64Array(part.typical.length);
  for (const row of part.rows) {
    weights[row.index] = (SNAPS_PER_SCORE * reached(row.reach) * sheetMark(row.row, FAMILIES[f] ?? 'base')) / row.lot;
  }
  return weights;
}

function variance(draws: Float64Array): number {
  const mean = draws.reduce((sum, value) => sum + value, 0) / draws.length;
  return draws.reduce((sum, value) => sum + (value - mean) ** 2, 0) / draws.length;
}
