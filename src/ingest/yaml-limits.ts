/** A settings file longer than this is none; judgment (the longest call library is some tens of kilobytes). */
const LONGEST_TEXT = 1_000_000;

/** Lines and entries in one line that no settings file comes near (300 calls have some 9,000); judgment. */
const MOST_PARTS = 20_000;

/**
 * Whether a text is too long for a settings file: what takes time to parse grows with the square of its keys, so that a
 * long file would keep the reader waiting.
 */
export function isTooLong(text: string): boolean {
  return text.length > LONGEST_TEXT || (text.match(/[\n\r,]/g)?.length ?? 0) > MOST_PARTS;
}
