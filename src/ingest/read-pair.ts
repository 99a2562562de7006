import { GOAL_TO_GO } from './goal-to-go.ts';

/** Two whole numbers written in one cell, as text. */
export interface NumberPair {
  readonly first: string;
  readonly second: string;
}

/** `3-10`, `3 & 10`, `3rd and 10`, `3/10`, `3 x 10`, `3,10`. */
const PAIR = /^(\d{1,2})(?:st|nd|rd|th)?\s*(?:[-\u2013\u2014&/,;:x+]|and)\s*(\d{1,2})$/i;

/** A down with goal to go: `1st & G`, `1-G`, `1 and goal`. */
const GOAL_PAIR = /^([1-4])(?:st|nd|rd|th)?\s*(?:[-\u2013\u2014&/,;:x+]|and)\s*g(?:oal)?\.?$/i;

/** A date as ISO 8601 writes it, with or without a time of day. */
const ISO_DATE = /^\d{4}-(\d{2})-(\d{2})(?:[T ].*)?$/;

/** Day and month, in either order, and a year: 3/10/2026, 10.3.26, 10-03-2026. */
const SLASHED_DATE = /^(\d{1,2})([-./])(\d{1,2})\2(?:\d{4}|\d{2})$/;

/** `10-Mar`, `10. March`, `10-Mar-26`. */
const DAY_MONTH = /^(\d{1,2})[-.\s/]+([a-z]{3,9})\.?(?:[-\s,]+\d{2,4})?$/i;

/** `Mar-10`, `March 10`, `Mar 10, 2026`. */
const MONTH_DAY = /^([a-z]{3,9})[-.\s/]+(\d{1,2})(?:[-\s,]+\d{2,4})?$/i;

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** A spreadsheet's number for a day when the cell is not shown as a date: five digits. */
const SERIAL = /^\d{5}$/;

/** The days of 2010 to 2049 as spreadsheets number them, from day 0 on 1899-12-30 (ECMA-376 part 1, 18.17.4). */
const [FIRST_SERIAL, LAST_SERIAL] = [40_179, 54_788];

/** A spreadsheet reads "Mar 35" as March of 1935: no day, a year of two digits from 30 on. */
const EARLY_MONTH = /^19([3-9]\d)-(\d{2})-01(?:[T ].*)?$/;

/**
 * How a spreadsheet's dates stand for two numbers. `plain`: month, then day, and as written where both are figures
 * (3/10/2026). `turned`: the other way round, as where days come before months.
 */
export const PAIR_DATES = ['plain', 'turned'] as const;

/** One word of {@link PAIR_DATES}. */
export type PairDates = (typeof PAIR_DATES)[number];

/**
 * The two numbers of a cell such as `3-10` (third down, ten to go). A spreadsheet that took them for a date (10-Mar,
 * 2026-03-10, 3/10/2026, 46091) is turned back. Undefined when the cell holds neither.
 *
 * @param dates - which of a date's numbers came first; see {@link PAIR_DATES}
 */
export function readPair(written: string, dates: PairDates = 'plain'): NumberPair | undefined {
  const text = written.trim();
  const plain = text.match(PAIR);
  if (plain) return pairOf(plain[1], plain[2]);
  const goal = text.match(GOAL_PAIR);
  if (goal) return { first: String(Number(goal[1])), second: GOAL_TO_GO };
  const dated = datedPair(text);
  return dated === undefined || dates === 'plain' ? dated : { first: dated.second, second: dated.first };
}

/** The two numbers of a date: month and day, or as written where both are figures. */
export function datedPair(text: string): NumberPair | undefined {
  const iso = serialDate(text) ?? text;
  const early = iso.match(EARLY_MONTH);
  if (early) return pairOf(early[2], early[1]);
  const days = iso.match(ISO_DATE);
  if (days) return pairOf(days[1], days[2]);
  const figures = text.match(SLASHED_DATE);
  if (figures) return pairOf(figures[1], figures[3]);
  const dayFirst = text.match(DAY_MONTH);
  if (dayFirst) return pairOf(monthNumber(dayFirst[2]), dayFirst[1]);
  const monthFirst = text.match(MONTH_DAY);
  return monthFirst ? pairOf(monthNumber(monthFirst[1]), monthFirst[2]) : undefined;
}

/** The day as ISO 8601 writes it, from a spreadsheet's number for it; undefined for any other text. */
function serialDate(text: string): string | undefined {
  const serial = SERIAL.test(text) ? Number(text) : Number.NaN;
  if (!(serial >= FIRST_SERIAL && serial <= LAST_SERIAL)) return undefined;
  return new Date(Date.UTC(1899, 11, 30 + serial)).toISOString().slice(0, 10);
}

/** Whether the cell is a date: a day of the calendar, or two numbers that a spreadsheet took for one. */
export function isDate(written: string): boolean {
  return datedPair(written.trim()) !== undefined;
}

/** The short name of a month, 1 to 12, in lower case. */
export function monthWord(month: number): string | undefined {
  return MONTHS[month - 1];
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
