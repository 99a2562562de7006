import { ANSWERS, FAMILIES, type Family } from '../../../game/vocabulary.ts';
import { quantilesBetween, type TailNeighbours } from '../../../stats/quantile.ts';
import { cellIndex } from '../../evidence/evidence-cell.ts';
import { breakEvenOf } from '../reason/break-even.ts';
import { familyReasons, type ReasonInput } from '../reason/reason.ts';
import type { AnswerPart, EvidenceWeights, FamilyScore, Spread } from '../score-result.ts';
import { chanceAbove, chancesBest, meanOf, spreadOf } from './family-score-chance.ts';
import { fitOf } from './family-score-fit.ts';
import type { ScoreModel } from './family-score-model.ts';
import { SNAPS_PER_SCORE } from './family-score-points.ts';
import type { ScoredSituation } from './family-score-week.ts';

/** What a situation's families are judged with, and which of them are judged. */
export interface FamilyScoreInput extends ReasonInput {
  /** Families on the page; the base is always among them. */
  readonly families: readonly Family[];
}

/**
 * The scores of all asked families in one situation: points saved per ten snaps against the four-man base with their
 * interval, chances, explosives, parts by answer, weights of the evidence, fit, reasons and break-even.
 */
export function familyScores(situation: ScoredSituation, input: FamilyScoreInput): FamilyScore[] {
  const indices = input.families.map((family) => FAMILIES.indexOf(family));
  const best = chancesBest(indices.map((f) => situation.points[f] as Float64Array));
  return indices.map((f, place): FamilyScore => {
    const family = FAMILIES[f] ?? 'base';
    const drawn = situation.points[f] as Float64Array;
    const answers = answerParts(situation, f);
    const points = spreadOf(
      drawn,
      answers.reduce((sum, part) => sum + part.points, 0),
    );
    return {
      family,
      situation: situation.id,
      points,
      explosives: explosiveSpread(situation, f),
      chanceBest: best[place] ?? 0,
      chanceBetterThanBase: chanceAbove(drawn),
      answers,
      weights: evidenceWeights(input.model, situation, f),
      ownSnaps: input.model.ownFilm.snaps[f] ?? 0,
      verdict: verdictOf(points),
      fit: fitOf(situation, f, input.model),
      reasons: familyReasons(situation, f, input),
      breakEven: breakEvenOf(situation, family, input.model),
    };
  });
}

function explosiveSpread({ explosives, explosiveTails }: ScoredSituation, f: number): Spread {
  const tails = explosiveTails[f] as TailNeighbours;
  return { mean: meanOf(explosives[f] as Float64Array), ...quantilesBetween(tails) };
}

/** What each answer adds to a family's score; the parts sum to its mean. */
export function answerParts({ shares, saved }: ScoredSituation, f: number): AnswerPart[] {
  return ANSWERS.map((answer, a) => {
    const share = shares[a] ?? 0;
    return { answer, share, points: SNAPS_PER_SCORE * share * (saved[cellIndex(f, a)] ?? 0) };
  });
}

function evidenceWeights({ evidence }: ScoreModel, { shares }: ScoredSituation, f: number): EvidenceWeights {
  const weights = { judgement: 0, openData: 0, ownFilm: 0 };
  shares.forEach((share, a) => {
    const cell = cellIndex(f, a);
    const parts = [evidence.judgement[cell] ?? 0, evidence.openData[cell] ?? 0, evidence.ownFilm[cell] ?? 0] as const;
    const worth = parts[0] + parts[1] + parts[2];
    weights.judgement += (share * parts[0]) / worth;
    weights.openData += (share * parts[1]) / worth;
    weights.ownFilm += (share * parts[2]) / worth;
  });
  return weights;
}

function verdictOf({ low, high }: Spread): FamilyScore['verdict'] {
  if (low > 0) return 'ahead of base';
  return high < 0 ? 'behind base' : 'no clear difference';
}
