import { ANSWERS, FAMILIES } from '../../../game/vocabulary.ts';
import type { TailNeighbours } from '../../../stats/quantile.ts';
import { CELL_COUNT } from '../../evidence/evidence-cell.ts';
import { type LookAlphas, meanShares } from '../../evidence/judgement-looks.ts';
import { scoreTails } from './family-score-chance.ts';
import type { SharedDraws } from './family-score-draws.ts';
import { type SituationCells, situationCells } from './family-score-means.ts';
import type { ScoreModel } from './family-score-model.ts';
import { familyExplosives, familyPoints } from './family-score-points.ts';

/** One situation scored, or all of them together by their expected snaps. */
export interface ScoredSituation {
  /** Situation id, or `all`. */
  readonly id: string;
  readonly label: string;
  readonly expectedSnaps: number;
  /** Whether their answers are known here; false where an ordinary offense stands in. */
  readonly known: boolean;
  /** Expected answer shares. */
  readonly shares: Float64Array;
  /** Points saved a snap by cell, in total and by what they come from; the mean over the situations where `all`. */
  readonly saved: Float64Array;
  readonly race: Float64Array;
  /** Points a snap of one sheet mark, by answer. */
  readonly perMark: Float64Array;
  /** Points a snap of one more loss, by answer. */
  readonly perLoss: Float64Array;
  readonly looks: LookAlphas;
  /** Answer shares at `answer * count + draw`. */
  readonly answerDraws: Float64Array;
  /** Points saved per ten snaps, and explosives per hundred, by family and draw. */
  readonly points: readonly Float64Array[];
  readonly explosives: readonly Float64Array[];
  /** What the ends of the explosives' intervals lie between, by family. */
  readonly explosiveTails: readonly TailNeighbours[];
}

/** A scored week: all situations together first, then each, with the cells the single ones were made from. */
export interface ScoredWeek {
  readonly all: ScoredSituation;
  readonly situations: readonly ScoredSituation[];
  readonly cells: readonly SituationCells[];
}

/** Scores every situation over the shared draws, and all of them weighted by their expected snaps. */
export function scoreWeek(model: ScoreModel, draws: SharedDraws): ScoredWeek {
  const cells = model.situations.map((_, s) => situationCells(model, s));
  const situations = model.situations.map(({ id, label, expectedSnaps, known, alphas }, s): ScoredSituation => {
    const drawn = { model, draws, cells: cells[s] as SituationCells, s };
    const explosives = FAMILIES.map((_, f) => familyExplosives(drawn, f));
    return {
      id,
      label,
      expectedSnaps,
      known,
      shares: meanShares(alphas),
      saved: drawn.cells.saved,
      race: drawn.cells.race,
      perMark: drawn.cells.perMark,
      perLoss: drawn.cells.perLoss,
      looks: model.looks.situations.get(id) ?? model.looks.all,
      answerDraws: draws.answers[s] as Float64Array,
      points: FAMILIES.map((_, f) => familyPoints(drawn, f)),
      explosives,
      explosiveTails: explosives.map(scoreTails),
    };
  });
  return { all: together(situations, model), situations, cells };
}

function together(situations: readonly ScoredSituation[], { weights, looks }: ScoreModel): ScoredSituation {
  const summed = (of: (situation: ScoredSituation) => Float64Array) => weightedSum(situations.map(of), weights);
  const shares = summed(({ shares: own }) => own);
  // A cell's points over all snaps are its points where it happens, so that parts and shares still multiply out.
  const perSnap = (of: (situation: ScoredSituation) => Float64Array) =>
    summed((situation) => of(situation).map((value, i) => value * shareAt(situation.shares, i))).map(
      (value, i) => value / (shareAt(shares, i) || 1),
    );
  const explosives = FAMILIES.map((_, f) => summed((situation) => situation.explosives[f] as Float64Array));
  return {
    id: 'all',
    label: 'all situations',
    expectedSnaps: situations.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0),
    known: situations.some(({ known }) => known),
    shares,
    saved: perSnap(({ saved }) => saved),
    race: perSnap(({ race }) => race),
    perMark: perSnap(({ perMark }) => perMark),
    perLoss: perSnap(({ perLoss }) => perLoss),
    looks: looks.all,
    answerDraws: summed(({ answerDraws }) => answerDraws),
    points: FAMILIES.map((_, f) => summed(({ points }) => points[f] as Float64Array)),
    explosives,
    explosiveTails: explosives.map(scoreTails),
  };
}

/** Share of the answer at place `i` of an array by answer or by cell. */
function shareAt(shares: Float64Array, i: number): number {
  return shares[i % ANSWERS.length] ?? 0;
}

function weightedSum(arrays: readonly Float64Array[], weights: Float64Array): Float64Array {
  const sum = new Float64Array(arrays[0]?.length ?? CELL_COUNT);
  arrays.forEach((array, s) => {
    addWeighted(sum, array, weights[s] as number);
  });
  return sum;
}

function addWeighted(sum: Float64Array, more: Float64Array, weight: number): void {
  for (let i = 0; i < sum.length; i++) sum[i] = (sum[i] as number) + weight * (more[i] as number);
}
