/**
 * The text without what must not reach a page: control characters and the marks that turn the writing direction of
 * everything after them. Line breaks and runs of blanks become one blank.
 *
 * @param text - anything a user or a file may have written
 * @returns text safe to measure, draw and escape; letters of any script are kept
 */
export function cleanText(text: string): string {
  return text.replace(CONTROL_OR_DIRECTION, ' ').replace(BLANKS, ' ').trim();
}

const BLANKS = /\s+/g;

// C0 and C1 controls, line and paragraph separators, and the embedding, override and isolate marks of Unicode's
// bidirectional algorithm; lone surrogates are cut because they cannot be written as UTF-8.
const CONTROL_OR_DIRECTION = /[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069\u200e\u200f\ufeff\p{Cs}]/gu;
