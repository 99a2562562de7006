import type { CellForm } from '../game/columns.ts';
import { type CellReading, faultReading, valueReading } from './cell-reading.ts';
import { suggest, withDigits } from './look-alike.ts';
import { withPlainMinus } from './plain-minus.ts';
import { readFigure } from './read-figure.ts';

/** The number form of a column. */
type NumberForm = Extract<CellForm, { form: 'number' }>;

/** A whole number; a spreadsheet may have added a point and zeros. */
const WHOLE = /^[+-]?\d+(?:\.0+)?$/;

/** A number with decimals, point or comma. */
const DECIMAL = /^[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;

/** Units that number things in order, of which one cannot have "a whole number of". */
const ORDINAL_UNITS = ['week', 'snap', 'drive', 'quarter', 'down'];

/** The number written in a cell, checked against the column's least and most. */
export function readNumber(form: NumberForm, text: string): CellReading {
  const value = parseNumber(form, text);
  if (value === undefined) return faultReading(ruleOf(form), suggestNumber(form, text));
  if (value < form.least || value > form.most) return faultReading(`is not from ${form.least} to ${form.most}`);
  return valueReading(value);
}

function parseNumber(form: NumberForm, text: string): number | undefined {
  const plain = withPlainMinus(text);
  const pattern = form.decimals === 0 ? WHOLE : DECIMAL;
  if (!pattern.test(plain)) return undefined;
  // Adding 0 turns -0 into 0.
  return Number(plain.replace(',', '.')) + 0;
}

function ruleOf({ unit, decimals }: NumberForm): string {
  const what = decimals === 0 ? 'a whole number' : 'a number';
  return ORDINAL_UNITS.includes(unit) ? `is not ${what}` : `is not ${what} of ${unit}`;
}

/**
 * The number that was meant: a loss in words or brackets ("loss of 3", "(3)", "3-"), letters that look like digits, or
 * words around a number ("8 yds", "3rd"). What could be a sign or a decimal point is never dropped: that would turn a
 * loss into a gain.
 */
function suggestNumber(form: NumberForm, text: string): string | undefined {
  const plain = withPlainMinus(text);
  for (const meant of [signedFigure(plain), withDigits(plain), onlyNumber(plain)]) {
    const value = parseNumber(form, meant);
    if (value !== undefined && value >= form.least && value <= form.most) return suggest(text, meant);
  }
  return undefined;
}

/** A number with words, brackets, or a minus before or after it; empty where there is none. */
function signedFigure(text: string): string {
  const behind = text.match(/^(\d+(?:[.,]\d+)?)\s*-$/)?.[1];
  const value = behind === undefined ? readFigure(text) : -Number(behind.replace(',', '.'));
  return Number.isNaN(value) ? '' : String(value);
}

/** The only number among letters and spaces; empty where other marks stand beside it. */
function onlyNumber(text: string): string {
  return text.match(/^[\p{L}\s#]*?([+-]?\d+(?:\.\d+)?)[\p{L}\s]*\.?$/u)?.[1] ?? '';
}
