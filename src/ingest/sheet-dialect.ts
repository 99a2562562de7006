import { plainWord } from './read-cell.ts';
import type { Dialect } from './split-rows.ts';

/** The delimiters tried, in order of preference. */
const DELIMITERS = [',', ';', '\t'] as const;

/** Lines among which the header is looked for: titles and remarks may stand above it; judgment. */
const HEAD_LINES = 30;

/** Characters among which it is looked for; see the bytes decoded at a time in decode-text.ts. */
const HEAD_LENGTH = 64 * 1024;

/** How a sheet is written, and how many known headers its header row holds (0 when no row holds two). */
export interface SheetHead extends Dialect {
  readonly known: number;
}

/**
 * How the sheet is written, from its first lines: the delimiter that uncovers most known headers in one of them, then
 * most cells in the first; the line end that closes the first line. A CR before LF is taken off with the white space of
 * the last cell.
 */
export function detectDialect(text: string, knownHeaders: ReadonlySet<string>): SheetHead {
  const start = withoutPreface(text);
  const lines = headLines(start);
  const line = lines[0] ?? '';
  const after = start.slice(line.length, line.length + 2);
  const newline = after[0] === '\r' && after[1] !== '\n' ? '\r' : '\n';
  const scored = DELIMITERS.map((delimiter) => {
    const known = mostKnown(lines, delimiter, knownHeaders);
    return { delimiter, known, score: known * 10_000 + Math.min(line.split(delimiter).length, 9_999) };
  });
  scored.sort((left, right) => right.score - left.score);
  const { delimiter = ',', known = 0 } = scored[0] ?? {};
  return { delimiter, newline, known: known < 2 ? 0 : known };
}

/** Most known headers in one of the lines; a line that has no more cells than were known in another cannot have more. */
function mostKnown(lines: readonly string[], delimiter: string, knownHeaders: ReadonlySet<string>): number {
  let most = 0;
  for (const line of lines) {
    const cells = line.split(delimiter);
    if (cells.length > most) most = Math.max(most, knownCount(cells, knownHeaders));
  }
  return most;
}

/** Whether the text holds all lines among which the header is looked for, and the line end of the first. */
export function hasHead(text: string): boolean {
  const start = withoutPreface(text);
  if (start.length > HEAD_LENGTH) return /[\r\n]./s.test(start);
  return start.split(/\r\n|\n|\r(?=[^\n])/, HEAD_LINES + 1).length > HEAD_LINES;
}

/** How many of the cells are headers that are known. */
export function knownCount(cells: readonly string[], knownHeaders: ReadonlySet<string>): number {
  return cells.filter((cell) => knownHeaders.has(headerKey(cell))).length;
}

/** Whether a row above the header is a remark of the template, which begins with #; a # alone heads a column of numbers. */
export function isRemark(cells: readonly string[]): boolean {
  const first = cells[0]?.trim() ?? '';
  return first.startsWith('#') && !(first === '#' && cells.some((cell, i) => i > 0 && cell.trim() !== ''));
}

/** The text from its header on: blank lines and remarks before it are taken off, and only when they are complete. */
function withoutPreface(text: string): string {
  return text.replace(
    /^(?:[^\S\r\n]*(?:"?#(?!"?[^\S\r\n]*[,;\t][^\r\n]*[^\s,;])[^\r\n]*)?(?:\r\n|\n|\r(?=[^\n])))*/,
    '',
  );
}

/** The first lines, without one that the window cuts through; at least the first, however long it is. */
function headLines(start: string): readonly string[] {
  const window = start.slice(0, HEAD_LENGTH).split(/\r\n|\n|\r/, HEAD_LINES + 1);
  const cut = start.length > HEAD_LENGTH && window.length <= HEAD_LINES;
  const whole = cut ? window.slice(0, -1) : window;
  return whole.length > 0 ? whole.slice(0, HEAD_LINES) : start.split(/\r\n|\n|\r/, 1);
}

/** A header as it is compared: quotation marks and white space off, lower case, spaces and hyphens as underscores. */
export function headerKey(header: string): string {
  return plainWord(header.replace(/^\s*"|"\s*$/g, ''));
}
