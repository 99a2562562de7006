/** Dashes that stand for a minus: the typographic minus, hyphens, en and em dash, and their small and full-width forms. */
const DASH = /[\u2010-\u2015\u2212\ufe58\ufe63\uff0d]/g;

/**
 * The text with every kind of dash written as the plain minus. Spreadsheets and word processors turn a minus that was
 * typed into a dash; on a cell that holds one number the two mean the same.
 */
export function withPlainMinus(text: string): string {
  return text.replace(DASH, '-');
}
