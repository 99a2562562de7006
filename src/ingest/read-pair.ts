/** Two whole numbers written in one cell, as text. */
export interface NumberPair {
  readonly first: string;
  readonly second: string;
}

/** `3-10`, `3 & 10`, `3rd and 10`, `3/10`, `3 x 10`, `3,10`. */
const PAIR = /^(\d{1,2})(?:st|nd|rd|th)?\s*(?:[-\u2013\u2014&/,;:x+]|and)\s*(\d{1,2})$/i;

/** A date as ISO 8601 writes it, with or without a time of day. */
const ISO_DATE = /^\d{4}-(\d{2})-(\d{2})(?:[T ].*)?$/;

/** A date in the order of the United States: 3/10/2026. */
const SLASHED_DATE = /^(\d{1,2})\/(\d{1,2})\/\d{2,4}$/;

/** `10-Mar`, `10. March`, `10-Mar-26`. */
const DAY_MONTH = /^(\d{1,2})[-.\s/]+([a-z]{3,9})\.?(?:[-\s,]+\d{2,4})?$/i;

/** `Mar-10`, `March 10`, `Mar 10, 2026`. */
const MONTH_DAY = /^([a-z]{3,9})[-.\s/]+(\d{1,2})(?:[-\s,]+\d{2,4})?$/i;

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/**
 * The two numbers of a cell such as `3-10` (third down, ten to go). A spreadsheet that took them for a date (10-Mar,
 * 2026-03-10, 3/10/2026) meant month, then day, and is turned back. Undefined when the cell holds neither.
 */
export function readPair(written: string): NumberPair | undefined {
  const text = written.trim();
  const plain = text.match(PAIR) ?? text.match(ISO_DATE) ?? text.match(SLASHED_DATE);
  if (plain) return pairOf(plain[1], plain[2]);
  const dayFirst = text.match(DAY_MONTH);
  if (dayFirst) return pairOf(monthNumber(dayFirst[2]), dayFirst[1]);
  const monthFirst = text.match(MONTH_DAY);
  return monthFirst ? pairOf(monthNumber(monthFirst[1]), monthFirst[2]) : undefined;
}

/** Whether the cell is a date: a day of the calendar, or two numbers that a spreadsheet took for one. */
export function isDate(written: string): boolean {
  const text = written.trim();
  if (ISO_DATE.test(text) || SLASHED_DATE.test(text) || /^\d{1,2}\.\d{1,2}\.\d{2,4}$/.test(text)) return true;
  const month = text.match(DAY_MONTH)?.[2] ?? text.match(MONTH_DAY)?.[1];
  return monthNumber(month) !== undefined;
}

function monthNumber(name: string | undefined): string | undefined {
  const index = MONTHS.indexOf((name ?? '').slice(0, 3).toLowerCase());
  return index === -1 ? undefined : String(index + 1);
}

/** Without zeros in front. */
function pairOf(first: string | undefined, second: string | undefined): NumberPair | undefined {
  if (first === undefined || second === undefined) return undefined;
  return { first: String(Number(first)), second: String(Number(second)) };
}
