import { ANSWERS, type Answer } from '../../../game/vocabulary.ts';
import { cellIndex } from '../../evidence/evidence-cell.ts';
import { edgeIn, LOSSES_PER_RUSHER_HOME } from '../../evidence/evidence-race.ts';
import { pointShift } from '../../evidence/judgement.ts';
import { meanShares } from '../../evidence/judgement-looks.ts';
import { baseShares } from '../../evidence/open-data.ts';
import { meanOf } from './family-score-chance.ts';
import type { SharedDraws } from './family-score-draws.ts';
import type { SituationCells } from './family-score-means.ts';
import type { ScoreModel } from './family-score-model.ts';

/** One situation ready to be drawn: its cells, its place in the model, the model and the shared draws. */
export interface DrawnSituation {
  readonly model: ScoreModel;
  readonly draws: SharedDraws;
  readonly cells: SituationCells;
  /** Index of the situation in the model. */
  readonly s: number;
}

/** Snaps a score is counted for. */
export const SNAPS_PER_SCORE = 10;

/**
 * Points saved per ten snaps by a family in a situation, by draw. The draws are moved as a whole so that their mean is
 * the exact expectation, which the parts by answer add up to.
 *
 * @param f - index of the family
 */
export function familyPoints(situation: DrawnSituation, f: number): Float64Array {
  const { draws } = situation;
  const points = new Float64Array(draws.count);
  ANSWERS.forEach((_, a) => {
    addAnswer(situation, { f, a }, points);
  });
  return centred(points, SNAPS_PER_SCORE * expectedSaved(situation, f));
}

/** Expected points saved a snap by a family in a situation: answer shares times the cells' points. */
export function expectedSaved({ model, cells, s }: DrawnSituation, f: number): number {
  return meanShares(model.situations[s]?.alphas ?? []).reduce(
    (sum, share, a) => sum + share * (cells.saved[cellIndex(f, a)] ?? 0),
    0,
  );
}

/**
 * Explosive plays per hundred snaps against a family in a situation, by draw: its evidence, less for looks that suit it
 * and rushers that come home.
 *
 * @param f - index of the family
 */
export function familyExplosives(situation: DrawnSituation, f: number): Float64Array {
  const { draws } = situation;
  const explosives = new Float64Array(draws.count);
  ANSWERS.forEach((answer, a) => {
    const { looks, race } = explosiveShifts(situation, answer, cellIndex(f, a));
    const { answers, markWorth } = drawnArrays(situation, { f, a });
    const drawn = draws.explosives[cellIndex(f, a)] as Float64Array;
    for (let i = 0; i < draws.count; i++) {
      const share = (drawn[i] as number) + race + looks * (markWorth[i] as number);
      explosives[i] = (explosives[i] as number) + 100 * (answers[i] as number) * Math.max(0, share);
    }
  });
  return explosives;
}

/** How looks and race move the share of explosives in a cell. */
function explosiveShifts({ model, cells, s }: DrawnSituation, answer: Answer, cell: number) {
  const base = baseShares(answer);
  const [loss, , , explosive] = base as unknown as readonly [number, number, number, number];
  const marks = (cells.looks[cell] ?? 0) / (cells.perMark[ANSWERS.indexOf(answer)] || 1);
  const losses = LOSSES_PER_RUSHER_HOME * (edgeIn(model.race, model.situations[s]?.id ?? '').families[cell] ?? 0);
  return {
    looks: model.markWeight * marks * (pointShift(base)[3] ?? 0),
    race: (-losses * explosive) / (1 - loss),
  };
}

/** The draws moved as a whole, in place, to a given mean. */
export function centred(draws: Float64Array, mean: number): Float64Array {
  const off = mean - meanOf(draws);
  for (let i = 0; i < draws.length; i++) draws[i] = (draws[i] as number) + off;
  return draws;
}

/** Adds one answer's part of every draw: what the cell saves, times how often they answer so. */
function addAnswer(situation: DrawnSituation, at: CellPlace, points: Float64Array): void {
  const { draws } = situation;
  const { own, base, answers, markWorth, release } = drawnArrays(situation, at);
  const noise = draws.lookNoise[at.a]?.[at.f] as Float64Array;
  const { looks, perMark, fixed, perRelease } = constants(situation, at);
  for (let i = 0; i < draws.count; i++) {
    const marks = looks + perMark * (noise[i] as number);
    const evidence = (base[i] as number) - (own[i] as number);
    const saved = evidence + fixed + (markWorth[i] as number) * marks + perRelease * (release[i] as number);
    points[i] = (points[i] as number) + SNAPS_PER_SCORE * (answers[i] as number) * saved;
  }
}

/** A family and an answer, as indices. */
interface CellPlace {
  readonly f: number;
  readonly a: number;
}

function drawnArrays({ model, draws, s }: DrawnSituation, { f, a }: CellPlace) {
  const down = (model.situations[s]?.down ?? 1) - 1;
  const ofAnswer = (values: Float64Array) => values.subarray(a * draws.count, (a + 1) * draws.count);
  return {
    own: draws.cost[cellIndex(f, a) * 4 + down] as Float64Array,
    base: draws.cost[cellIndex(0, a) * 4 + down] as Float64Array,
    answers: ofAnswer(draws.answers[s] as Float64Array),
    markWorth: draws.markWorth,
    release: ofAnswer(draws.release),
  };
}

function constants({ model, cells }: DrawnSituation, { f, a }: CellPlace) {
  const cell = cellIndex(f, a);
  return {
    looks: cells.looks[cell] as number,
    perMark: cells.perMark[a] as number,
    fixed: cells.fixed[cell] as number,
    perRelease: LOSSES_PER_RUSHER_HOME * (model.race.spread[cell] as number) * (cells.perLoss[a] as number),
  };
}
