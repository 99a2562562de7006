import { ANSWERS, type Answer } from '../../../game/vocabulary.ts';
import { betaQuantile } from '../../../stats/beta.ts';
import { quantile } from '../../../stats/quantile.ts';
import { cellIndex } from '../../evidence/evidence-cell.ts';
import { lookRow } from '../../evidence/judgement-look-parts.ts';
import { meanShares } from '../../evidence/judgement-looks.ts';
import type { SheetRow } from '../../evidence/judgement-sheet.ts';
import { answerMarks, marksOf } from '../family/family-score-means.ts';
import type { ScoredSituation } from '../family/family-score-week.ts';

/** How much of a quantity they show, where two families are worth the same in it, and who is ahead on either side. */
export interface Turn {
  readonly shown: number;
  readonly low: number;
  readonly high: number;
  /** Null when the two are never worth the same between 0 and 1. */
  readonly turnsAt: number | null;
  /** Whether more of the quantity helps the family. */
  readonly rises: boolean;
  /** Whether the family is ahead at what they show. */
  readonly ahead: boolean;
}

/** Two families, as indices. */
export interface FamilyPair {
  readonly family: number;
  readonly against: number;
}

/** The turn in the share of some answers taken together, the other answers keeping their proportions. */
export function answerTurn(situation: ScoredSituation, pair: FamilyPair, answers: readonly Answer[]): Turn {
  const inside = ANSWERS.map((answer) => answers.includes(answer));
  const withThem = averageLead(situation, pair, (a) => inside[a] === true);
  const without = averageLead(situation, pair, (a) => inside[a] === false);
  const { shares, answerDraws } = situation;
  const shown = shares.reduce((sum, share, a) => sum + (inside[a] ? share : 0), 0);
  const drawn = summedDraws(answerDraws, inside);
  return {
    shown,
    low: quantile(drawn, TAIL),
    high: quantile(drawn, 1 - TAIL),
    turnsAt: withinShares(without / (without - withThem)),
    rises: withThem > without,
    ahead: shown * withThem + (1 - shown) * without > 0,
  };
}

/** The turn in the share of one look, the other classes of its part keeping their proportions. */
export function lookTurn(situation: ScoredSituation, pair: FamilyPair, row: SheetRow): Turn {
  const { part, index } = lookRow(row);
  const alphas = situation.looks[part] as Float64Array;
  const total = alphas.reduce((sum, alpha) => sum + alpha, 0);
  const own = alphas[index] as number;
  const shown = own / total;
  const lead = averageLead(situation, pair, () => true);
  const slope = leadAt(situation, pair, { part, index, share: 1 }) - leadAt(situation, pair, { part, index, share: 0 });
  return {
    shown,
    ...shareBounds(own, total - own),
    turnsAt: withinShares(shown - lead / slope),
    rises: slope > 0,
    ahead: lead > 0,
  };
}

const TAIL = 0.025;

/** Where the share lies; a class nothing was ever given to, or everything, has no spread to speak of. */
function shareBounds(own: number, others: number): { readonly low: number; readonly high: number } {
  if (own === 0 || others === 0) return { low: own === 0 ? 0 : 1, high: own === 0 ? 0 : 1 };
  return { low: betaQuantile(TAIL, own, others), high: betaQuantile(1 - TAIL, own, others) };
}

/** Points a snap by which the family leads over some of the answers, weighted as they show them. */
function averageLead(situation: ScoredSituation, pair: FamilyPair, keep: (answer: number) => boolean): number {
  const { shares, saved } = situation;
  let [points, weight] = [0, 0];
  shares.forEach((share, a) => {
    if (!keep(a)) return;
    points += share * ((saved[cellIndex(pair.family, a)] ?? 0) - (saved[cellIndex(pair.against, a)] ?? 0));
    weight += share;
  });
  return weight === 0 ? 0 : points / weight;
}

/** What the looks alone give the family over the other, when one class of a part had a given share. */
function leadAt(situation: ScoredSituation, pair: FamilyPair, look: { part: number; index: number; share: number }) {
  const shares = situation.looks.map((alphas, i) => (i === look.part ? withShare(alphas, look) : meanShares(alphas)));
  const marks = marksOf(shares);
  return situation.shares.reduce((sum, share, a) => {
    const lead = answerMarks(marks, pair.family, a) - answerMarks(marks, pair.against, a);
    return sum + share * (situation.perMark[a] ?? 0) * lead;
  }, 0);
}

function withShare(alphas: Float64Array, { index, share }: { index: number; share: number }): Float64Array {
  const means = meanShares(alphas);
  const others = 1 - (means[index] ?? 0);
  return means.map((mean, i) => (i === index ? share : ((1 - share) * mean) / others));
}

function summedDraws(answerDraws: Float64Array, inside: readonly boolean[]): Float64Array {
  const count = answerDraws.length / ANSWERS.length;
  const sum = new Float64Array(count);
  inside.forEach((wanted, a) => {
    if (!wanted) return;
    for (let i = 0; i < count; i++) sum[i] = (sum[i] as number) + (answerDraws[a * count + i] as number);
  });
  return sum;
}

function withinShares(turn: number): number | null {
  return turn >= 0 && turn <= 1 ? turn : null;
}
