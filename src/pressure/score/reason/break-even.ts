import { type Answer, FAMILIES, type Family } from '../../../game/vocabulary.ts';
import { lookRow } from '../../evidence/judgement-look-parts.ts';
import type { SheetRow } from '../../evidence/judgement-sheet.ts';
import type { ScoreModel } from '../family/family-score-model.ts';
import type { ScoredSituation } from '../family/family-score-week.ts';
import type { BreakEven } from '../score-result.ts';
import { answerTurn, lookTurn } from './break-even-turn.ts';
import { breakEvenWords } from './break-even-words.ts';

/**
 * The quantity that decides for or against a family, how much of it they show (95% interval), and the share at which
 * the family and what it is measured against are worth the same when everything else keeps its proportions.
 *
 * @returns null for the base, which is the yardstick
 */
export function breakEvenOf(situation: ScoredSituation, family: Family, model: ScoreModel): BreakEven | null {
  if (family === 'base') return null;
  const quantity = DECIDING[family];
  const { against, words: name } = quantity;
  const pair = { family: FAMILIES.indexOf(family), against: FAMILIES.indexOf(against) };
  const turn =
    quantity.kind === 'answers'
      ? answerTurn(situation, pair, quantity.answers)
      : lookTurn(situation, pair, quantity.row);
  const charted = quantity.kind === 'answers' ? situation.known : isCharted(model, quantity.row);
  const { shown, low, high, turnsAt } = turn;
  return {
    quantity: name,
    against,
    shown,
    low,
    high,
    turnsAt,
    words: breakEvenWords(turn, { against, name, charted }),
  };
}

type Quantity =
  | { readonly kind: 'answers'; readonly answers: readonly Answer[]; readonly against: Family; readonly words: string }
  | { readonly kind: 'look'; readonly row: SheetRow; readonly against: Family; readonly words: string };

const DECIDING: Readonly<Record<Exclude<Family, 'base'>, Quantity>> = {
  three_under: { kind: 'look', row: 'trips', against: 'four_under', words: 'trips' },
  four_under: { kind: 'look', row: 'flat_throws', against: 'three_under', words: 'throws to the flat' },
  man_free: { kind: 'answers', answers: ['quarterback_run'], against: 'base', words: 'quarterback runs' },
  hot: { kind: 'answers', answers: ['screen'], against: 'base', words: 'screens' },
  zero: { kind: 'look', row: 'releases_wide', against: 'peel', words: 'backs released wide' },
  peel: { kind: 'look', row: 'releases_wide', against: 'zero', words: 'backs released wide' },
  peel_spy: { kind: 'answers', answers: ['quarterback_run'], against: 'peel', words: 'quarterback runs' },
  add_on: { kind: 'answers', answers: ['screen', 'quick'], against: 'base', words: 'screens and quick game together' },
};

function isCharted({ looks }: ScoreModel, row: SheetRow): boolean {
  return (looks.film[lookRow(row).part] ?? new Float64Array()).some((count) => count > 0);
}
