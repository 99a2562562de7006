import { type CellReading, faultReading, valueReading } from './cell-reading.ts';
import { suggest, withDigits } from './look-alike.ts';
import { nearestWord } from './nearest-word.ts';
import { withPlainMinus } from './plain-minus.ts';

/** A side (a word or a sign) and a yard line. */
const YARD_LINE = /^(own|opp|o|-|\+)[\s_-]*(\d{1,2})$/;

/** The rule a ball position breaks when it cannot be read. */
const RULE = 'is not a yard line such as own 35, opp 20 or 50';

/**
 * Yards to the opponent's goal line from a ball position as the offense sees it: `own 35` (also `-35`, `o35`) is 65,
 * `opp 20` (also `+20`) is 20, `50` is 50. A bare number below 50 could lie on either side, so it is a fault.
 */
export function readFieldPosition(text: string): CellReading {
  const plain = withPlainMinus(text).toLowerCase();
  if (plain === '50') return valueReading(50);
  if (/^\d+$/.test(plain)) return bareNumber(Number(plain));
  const yards = yardsToGoal(plain);
  return yards === undefined ? faultReading(RULE, suggestPosition(text)) : valueReading(yards);
}

/** Yards to the opponent's goal line as the coach writes the ball position: 65 is `own 35`. */
export function writeFieldPosition(yards: number): string {
  if (yards === 50) return '50';
  return yards > 50 ? `own ${100 - yards}` : `opp ${yards}`;
}

function yardsToGoal(plain: string): number | undefined {
  const [, side, digits] = plain.match(YARD_LINE) ?? [];
  const line = Number(digits);
  if (side === undefined || line < 1 || line > 50) return undefined;
  return side === 'opp' || side === '+' ? line : 100 - line;
}

function bareNumber(line: number): CellReading {
  if (line >= 1 && line < 50) {
    return faultReading('does not say on which side of the 50', `Did you mean "own ${line}" or "opp ${line}"?`);
  }
  return faultReading(
    RULE,
    line < 100 ? 'If the sheet counts yards to the goal line, a profile can say so.' : undefined,
  );
}

function suggestPosition(text: string): string | undefined {
  const [, side = '', line = ''] = text.toLowerCase().match(/^([a-z]+)[\s._-]*([\dolisbz|]{1,2})$/) ?? [];
  const word = ['own', 'opp'].includes(side) ? side : nearestWord(side, ['own', 'opp']);
  const meant = `${word} ${withDigits(line)}`;
  return yardsToGoal(meant) === undefined ? undefined : suggest(text, meant);
}
