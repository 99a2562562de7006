import { datedPair, type PairDates, readPair } from '../read-pair.ts';
import { type Answers, answerOf } from './question.ts';

/** How the dates of a column of pairs are to be turned back, and whether that is only a guess. */
export interface PairOrder {
  readonly dates: PairDates;
  readonly open: boolean;
}

/** A column of pairs by its header and how often each text stands there. */
interface PairColumn {
  readonly header: string;
  readonly counts: ReadonlyMap<string, number>;
}

/** One order makes downs of so much more of the cells than the other, or it is asked; judgment. */
const CLEARLY = 0.05;

/**
 * Which number of a spreadsheet's dates was typed first: a down is 1 to 4, so a 5 or more in one place tells. `open`
 * when both orders make downs of nearly all cells; a column without dates has no order to find.
 */
export function pairOrder({ header, counts }: PairColumn, answers: Answers): PairOrder {
  const answer = answerOf(answers, datesKey(header));
  if (answer === 'plain' || answer === 'turned') return { dates: answer, open: false };
  const dated = [...counts].filter(([text]) => tellsOrder(text));
  const cells = dated.reduce((sum, [, count]) => sum + count, 0);
  if (cells === 0) return { dates: 'plain', open: false };
  const [plain, turned] = [downShare(dated, 'plain'), downShare(dated, 'turned')];
  if (turned > plain + CLEARLY) return { dates: 'turned', open: false };
  return { dates: 'plain', open: plain <= turned + CLEARLY };
}

/** What the answer about the dates of a column is filed under. */
export function datesKey(header: string): string {
  return `${header}/dates`;
}

/** A date with two different numbers. */
function tellsOrder(text: string): boolean {
  const pair = readPair(text) === undefined ? undefined : datedPair(text.trim());
  return pair !== undefined && pair.first !== pair.second;
}

function downShare(dated: readonly (readonly [string, number])[], dates: PairDates): number {
  let [downs, all] = [0, 0];
  for (const [text, count] of dated) {
    const first = Number(readPair(text, dates)?.first);
    if (first >= 1 && first <= 4) downs += count;
    all += count;
  }
  return downs / all;
}
