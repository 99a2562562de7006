import { plainWord } from './read-cell.ts';

/** A word for a side of the field and a yard line, in either order: `OAK 35`, `35 OAK`, `OAK-35`. */
const WORD_FIRST = /^([a-z][a-z .']*?)[\s._-]*(\d{1,2})$/i;
const LINE_FIRST = /^(\d{1,2})[\s._-]*([a-z][a-z .']*)$/i;

/** The word and the yard line of a cell such as `OAK 35`; undefined when it has no such shape. */
export function splitYardLine(written: string): { readonly word: string; readonly line: number } | undefined {
  const text = written.trim();
  const wordFirst = text.match(WORD_FIRST);
  const lineFirst = text.match(LINE_FIRST);
  const word = wordFirst?.[1] ?? lineFirst?.[2];
  const line = Number(wordFirst?.[2] ?? lineFirst?.[1]);
  return word === undefined || line < 1 || line > 50 ? undefined : { word: plainWord(word), line };
}

/**
 * The cell as our own sheet writes a ball position, by what a profile says of his words for a side. A cell without one
 * of the words stays as it is, and is judged as it stands.
 */
export function withSide(sides: ReadonlyMap<string, 'own' | 'opp'>, written: string): string {
  const split = splitYardLine(written);
  const side = split && sides.get(split.word);
  if (split === undefined || side === undefined) return written;
  return split.line === 50 ? '50' : `${side} ${split.line}`;
}
