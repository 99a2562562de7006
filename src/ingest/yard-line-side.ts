import { plainWord } from './read-cell.ts';
import { datedPair, monthWord, type PairDates } from './read-pair.ts';

/** A word for a side of the field and a yard line, in either order: `PLW 35`, `35 PLW`, `PLW-35`. */
const WORD_FIRST = /^([a-z][a-z .']*?)[\s._-]*(\d{1,2})$/i;
const LINE_FIRST = /^(\d{1,2})[\s._-]*([a-z][a-z .']*)$/i;

/** What a cell says of the ball: a word for a side of the field, and the yard line. */
export interface SideAndLine {
  readonly word: string;
  readonly line: number;
}

/**
 * The word and the yard line of a cell such as `PLW 35`; undefined when it has no such shape. A team with a month
 * for a short name may have become a date: 2026-03-10 is `mar` and 10, and so is 3/10/2026, or 10/3/2026 when dates are turned.
 */
export function splitYardLine(written: string, dates: PairDates = 'plain'): SideAndLine | undefined {
  const text = written.trim();
  return writtenSide(text) ?? datedSide(text, dates);
}

function writtenSide(text: string): SideAndLine | undefined {
  const wordFirst = text.match(WORD_FIRST);
  const lineFirst = text.match(LINE_FIRST);
  const word = wordFirst?.[1] ?? lineFirst?.[2];
  const line = Number(wordFirst?.[2] ?? lineFirst?.[1]);
  return word === undefined || line < 1 || line > 50 ? undefined : { word: plainWord(word), line };
}

function datedSide(text: string, dates: PairDates): SideAndLine | undefined {
  const pair = datedPair(text);
  if (pair === undefined) return undefined;
  // Only where both are figures may the day stand first; year, month and day have one order.
  const turned = dates === 'turned' && !/^\d{4}/.test(text);
  const word = monthWord(Number(turned ? pair.second : pair.first));
  const line = Number(turned ? pair.first : pair.second);
  return word === undefined || line < 1 || line > 50 ? undefined : { word, line };
}

/**
 * The cell as our own sheet writes a ball position, by what a profile says of his words for a side. A cell without one
 * of the words stays as it is, and is judged as it stands.
 */
export function withSide(sides: ReadonlyMap<string, 'own' | 'opp'>, written: string, dates?: PairDates): string {
  const split = splitYardLine(written, dates);
  const side = split && sides.get(split.word);
  if (split === undefined || side === undefined) return written;
  return split.line === 50 ? '50' : `${side} ${split.line}`;
}
