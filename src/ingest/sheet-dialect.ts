import { plainWord } from './read-cell.ts';
import type { Dialect } from './split-rows.ts';

/** The delimiters tried, in order of preference. */
const DELIMITERS = [',', ';', '\t'] as const;

/**
 * How the sheet is written, from its first lines: the delimiter that uncovers most known headers, then most cells; the
 * line end that closes the first line. A CR before LF is taken off with the white space of the last cell.
 */
export function detectDialect(text: string, knownHeaders: ReadonlySet<string>): Dialect {
  const start = withoutPreface(text);
  const line = start.split(/\r\n|\n|\r/, 1)[0] ?? '';
  const after = start.slice(line.length, line.length + 2);
  const newline = after[0] === '\r' && after[1] !== '\n' ? '\r' : '\n';
  const scored = DELIMITERS.map((delimiter) => ({ delimiter, score: scoreOf(line.split(delimiter), knownHeaders) }));
  scored.sort((left, right) => right.score - left.score);
  return { delimiter: scored[0]?.delimiter ?? ',', newline };
}

/** Whether the text holds a whole header line and something after it, so that its line end can be told. */
export function hasHeaderLine(text: string): boolean {
  return /[\r\n]./s.test(withoutPreface(text));
}

/** Whether a row above the header is a remark of the template, which begins with #. */
export function isRemark(cells: readonly string[]): boolean {
  return cells[0]?.trimStart().startsWith('#') ?? false;
}

/** The text from its header on: blank lines and remarks before it are taken off, and only when they are complete. */
function withoutPreface(text: string): string {
  return text.replace(/^(?:[^\S\r\n]*(?:"?#[^\r\n]*)?(?:\r\n|\n|\r(?=[^\n])))*/, '');
}

/** A known header outweighs any number of cells. */
function scoreOf(cells: readonly string[], knownHeaders: ReadonlySet<string>): number {
  const known = cells.filter((cell) => knownHeaders.has(headerKey(cell))).length;
  return known * 10_000 + Math.min(cells.length, 9_999);
}

/** A header as it is compared: quotation marks and white space off, lower case, spaces and hyphens as underscores. */
export function headerKey(header: string): string {
  return plainWord(header.replace(/^\s*"|"\s*$/g, ''));
}
