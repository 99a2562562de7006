import { ANSWERS, FAMILIES } from '../../../game/vocabulary.ts';
import { answerMark } from '../../evidence/judgement.ts';
import { meanShares } from '../../evidence/judgement-looks.ts';
import type { FamilyScore } from '../score-result.ts';
import { answerMarks, marksOf } from './family-score-means.ts';
import type { ScoreModel } from './family-score-model.ts';
import type { ScoredSituation } from './family-score-week.ts';

/** Sheet points beyond which a family is called sound here, or a poor fit; judgement. */
const CLEAR_MARK = 0.4;

/** Whether a family fits what they do by the trade's sheet alone, whatever the film or open data say. */
export function fitOf(situation: ScoredSituation, f: number, model: ScoreModel): FamilyScore['fit'] {
  const mark = sheetTotal(situation, f, model);
  if (mark >= CLEAR_MARK) return 'sound here';
  return mark <= -CLEAR_MARK ? 'poor fit' : 'mixed';
}

/** The sheet's marks of a family over everything they do in a situation: answers by their shares, looks by their lots. */
export function sheetTotal({ shares, looks }: ScoredSituation, f: number, { habits }: ScoreModel): number {
  const marks = marksOf(looks.map(meanShares));
  const family = FAMILIES[f] ?? 'base';
  return ANSWERS.reduce(
    (sum, answer, a) => sum + (shares[a] ?? 0) * (answerMark(family, answer, habits) + answerMarks(marks, f, a)),
    0,
  );
}
