import { columnLetter } from '../column-letter.ts';
import { filledCount } from './filled-count.ts';
import { headerTokens, isTradeHeader } from './trade-words.ts';

/** The header row of a sheet: its 1-based row, or 0 and made-up headers when it has none. */
export interface HeaderFound {
  readonly row: number;
  readonly headers: readonly string[];
}

interface TableCells {
  readonly row: number;
  readonly cells: readonly string[];
}

/** Rows among which the header is looked for; the reader looks as far. */
const HEAD_ROWS = 30;

/** The row that looks most like a header: filled, of words, each another one, and of trade words or unlike what is below. */
export function findHeaderRow(rows: readonly TableCells[]): HeaderFound {
  const head = rows.slice(0, HEAD_ROWS);
  const width = Math.max(0, ...head.map(({ cells }) => cells.length));
  const usual = Math.max(1, ...head.map(({ cells }) => filledCount(cells)));
  const scored = head.map(({ row, cells }, i) => ({
    row,
    cells,
    score: headerScore(cells, usual, rows.slice(i + 1, i + 1 + BELOW)) - i / 1000,
  }));
  scored.sort((left, right) => right.score - left.score);
  const best = scored[0];
  if (best !== undefined && best.score > NO_HEADER) return { row: best.row, headers: best.cells };
  return { row: 0, headers: Array.from({ length: width }, (_, i) => `column ${columnLetter(i)}`) };
}

/** Rows below a header that it is compared with; judgment. */
const BELOW = 40;

/** A first row that scores less is a snap already; judgment: half filled with distinct words. */
const NO_HEADER = 0.55;

function headerScore(cells: readonly string[], usual: number, below: readonly TableCells[]): number {
  const filled = cells.map((cell) => cell.trim()).filter((cell) => cell !== '');
  if (filled.length < 2) return 0;
  const words = filled.filter(looksLikeHeader).length / filled.length;
  const distinct = new Set(filled.map((cell) => cell.toLowerCase())).size / filled.length;
  const trade = filled.filter(isTradeHeader).length / filled.length;
  const telling = Math.max(trade, contrast(cells, below));
  return (filled.length / usual) * words * (0.5 + 0.5 * distinct) * (0.3 + 0.7 * telling);
}

/** The share of columns with text that does not come again below, or stands over numbers. */
function contrast(cells: readonly string[], below: readonly TableCells[]): number {
  const columns = cells.flatMap((cell, i) => {
    const under = below.map((row) => (row.cells[i] ?? '').trim()).filter((text) => text !== '');
    return cell.trim() === '' || under.length === 0 ? [] : [{ cell: cell.trim(), under }];
  });
  const unlike = columns.filter(({ cell, under }) => isUnlike(cell, under));
  return columns.length === 0 ? 0 : unlike.length / columns.length;
}

/** Figures say of a word above them that it is a header; words that come again below it say that it is one of them. */
function isUnlike(cell: string, under: readonly string[]): boolean {
  const figures = under.filter((text) => /\d/.test(text) && !/\p{L}{3}/u.test(text)).length;
  if (figures >= 0.7 * under.length) return /\p{L}{2}/u.test(cell);
  return new Set(under).size < 0.7 * under.length && !under.includes(cell);
}

/** A header has a letter, is no clock, date, yard line or ordinal, and is not long. */
function looksLikeHeader(cell: string): boolean {
  if (!/\p{L}/u.test(cell) || cell.length > 40) return false;
  if (/^\d+(?:st|nd|rd|th)\b/i.test(cell) || /^(?:own|opp|o)[\s-]*\d+$/i.test(cell)) return false;
  return headerTokens(cell).some((token) => /\p{L}/u.test(token));
}
