import { yardsOfPosition } from '../game/written-numbers.ts';
import { type CellReading, faultReading, valueReading } from './cell-reading.ts';
import { suggest, withDigits } from './look-alike.ts';
import { nearestWord } from './nearest-word.ts';
import { withPlainMinus } from './plain-minus.ts';

/** The rule a ball position breaks when it cannot be read. */
const RULE = 'is not a yard line such as own 35, opp 20 or 50';

/**
 * Yards to the opponent's goal line from a ball position as the offense sees it: `own 35` (also `-35`, `o35`) is 65,
 * `opp 20` (also `+20`) is 20, `50` is 50. A bare number below 50 could lie on either side, so it is a fault.
 */
export function readFieldPosition(text: string): CellReading {
  const plain = withPlainMinus(text).toLowerCase();
  const yards = yardsOfPosition(plain);
  if (yards === undefined && /^\d+$/.test(plain)) return bareNumber(Number(plain));
  return yards === undefined ? faultReading(RULE, suggestPosition(text)) : valueReading(yards);
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
  return yardsOfPosition(meant) === undefined ? undefined : suggest(text, meant);
}
