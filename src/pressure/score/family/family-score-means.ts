import { ANSWERS, type Answer, FAMILIES, type Family } from '../../../game/vocabulary.ts';
import { cellWorth, meanOutcomes } from '../../evidence/evidence.ts';
import { CELL_COUNT, cellIndex } from '../../evidence/evidence-cell.ts';
import { edgeIn, LOSSES_PER_RUSHER_HOME, pointsPerLoss } from '../../evidence/evidence-race.ts';
import { pointShift, pointsSaved } from '../../evidence/judgement.ts';
import { LOOK_REACHES, type LookReach, reaches } from '../../evidence/judgement-look-parts.ts';
import { type LookAlphas, lookMarks, meanShares } from '../../evidence/judgement-looks.ts';
import { baseShares } from '../../evidence/open-data.ts';
import { type OutcomeValues, outcomePremiums, outcomeValues } from '../../evidence/outcome-value.ts';
import type { ScoreModel } from './family-score-model.ts';
import { inTradeOrder } from './family-score-order.ts';

/** Expected points saved a snap by every family against every answer in one situation, and what they are made of. */
export interface SituationCells {
  /** Points saved a snap by cell: evidence, looks and race, in the order the trade is sure of. */
  readonly saved: Float64Array;
  /** The part that comes from their looks. */
  readonly looks: Float64Array;
  /** The part that comes from the race. */
  readonly race: Float64Array;
  /** What is added to drawn evidence and looks to arrive at `saved`: the race and the ordering. */
  readonly fixed: Float64Array;
  /** Points a snap that one mark of the sheet is worth, by answer. */
  readonly perMark: Float64Array;
  /** Points a snap that one more loss is worth, by answer. */
  readonly perLoss: Float64Array;
}

/**
 * The expected points of every cell in a situation against the four-man base. The expectation is linear in the answer
 * shares and in the looks, which is what keeps it from ever moving the wrong way when they do more of something.
 *
 * @param s - index of the situation in the model
 */
export function situationCells(model: ScoreModel, s: number): SituationCells {
  const down = model.situations[s]?.down ?? 1;
  const perMark = byAnswer(
    (answer) => model.markWeight * pointsSaved(pointShift(baseShares(answer)), outcomeValues(answer, down)),
  );
  const perLoss = byAnswer((answer) => pointsPerLoss(baseShares(answer), outcomeValues(answer, down)));
  const marks = situationMarks(model, s);
  const edge = edgeIn(model.race, model.situations[s]?.id ?? '');
  const evidence = evidenceCells(model, down);
  const looks = byCell((f, a) => (perMark[a] ?? 0) * answerMarks(marks, f, a));
  const race = byCell((f, a) => LOSSES_PER_RUSHER_HOME * (edge.families[cellIndex(f, a)] ?? 0) * (perLoss[a] ?? 0));
  const plain = evidence.map((points, cell) => points + (looks[cell] ?? 0) + (race[cell] ?? 0));
  const worth = plain.map((_, cell) => cellWorth(model.evidence, cell));
  const saved = inTradeOrder(plain, worth);
  const fixed = saved.map((points, cell) => points - (evidence[cell] ?? 0) - (looks[cell] ?? 0));
  return { saved, looks, race, fixed, perMark, perLoss };
}

/** Sums of sheet marks by family, for the looks of each reach. */
export type LookMarks = Readonly<Record<LookReach, Float64Array>>;

/** The marks the offense's looks earn each family in a situation. */
export function situationMarks(model: ScoreModel, s: number): LookMarks {
  const alphas = model.looks.situations.get(model.situations[s]?.id ?? '') ?? model.looks.all;
  return marksOf(alphas.map(meanShares));
}

/** The marks of given looks by reach. @param shares - shares of each part's classes */
export function marksOf(shares: LookAlphas): LookMarks {
  return { set: lookMarks(shares, 'set'), pass: lookMarks(shares, 'pass'), held: lookMarks(shares, 'held') };
}

/** The marks that bear on one cell: those of every look that reaches the answer. */
export function answerMarks(marks: LookMarks, family: number, answer: number): number {
  return LOOK_REACHES.reduce(
    (sum, reach) => sum + (reaches(reach, ANSWERS[answer] ?? 'run') ? (marks[reach][family] ?? 0) : 0),
    0,
  );
}

/** What the outcome kinds of a family's cell are worth to the offense on a down. */
export function cellValues(family: Family, answer: Answer, down: number): OutcomeValues {
  const premiums = outcomePremiums(family, answer);
  const [loss, stop, gain, explosive, takeaway] = outcomeValues(answer, down);
  return [loss + premiums[0], stop + premiums[1], gain + premiums[2], explosive + premiums[3], takeaway + premiums[4]];
}

function evidenceCells(model: ScoreModel, down: number): Float64Array {
  const cost = byCell((f, a) => {
    const values = cellValues(FAMILIES[f] ?? 'base', ANSWERS[a] ?? 'run', down);
    return -pointsSaved(meanOutcomes(model.evidence, cellIndex(f, a)), values);
  });
  return cost.map((points, cell) => (cost[cellIndex(0, cell % ANSWERS.length)] ?? 0) - points);
}

function byCell(value: (family: number, answer: number) => number): Float64Array {
  return Float64Array.from({ length: CELL_COUNT }, (_, cell) =>
    value(Math.floor(cell / ANSWERS.length), cell % ANSWERS.length),
  );
}

function byAnswer(value: (answer: Answer) => number): Float64Array {
  return Float64Array.from(ANSWERS, value);
}
