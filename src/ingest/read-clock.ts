import { secondsOfClock } from '../game/written-numbers.ts';
import { type CellReading, faultReading, valueReading } from './cell-reading.ts';
import { suggest, withDigits } from './look-alike.ts';

/** The longest quarter at any level, in seconds (15 minutes; high school plays 12). */
const LONGEST_QUARTER = 15 * 60;

/** Seconds left in the quarter from `7:42`. */
export function readClock(text: string): CellReading {
  const seconds = secondsOfClock(text);
  if (seconds === undefined) return faultReading('is not a clock of the form 7:42', suggestClock(text));
  if (seconds > LONGEST_QUARTER) return faultReading('is more than a quarter of 15:00');
  return valueReading(seconds);
}

function suggestClock(text: string): string | undefined {
  const digits = withDigits(text).replace(/[.,;]/, ':');
  const [, minutes, seconds] = digits.match(/^(\d{0,2}):?(\d\d)$/) ?? [];
  const meant = `${minutes || '0'}:${seconds}`;
  const value = secondsOfClock(meant);
  return value === undefined || value > LONGEST_QUARTER ? undefined : suggest(text, meant);
}
