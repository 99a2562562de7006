/** A side (a word or a sign) and a yard line. */
const YARD_LINE = /^(own|opp|o|-|\+)[\s_-]*(\d{1,2})$/;

/** Minutes and seconds; a spreadsheet that took them for a time of day adds `:00`. */
const CLOCK = /^(\d{0,2}):([0-5]\d)(?::00)?$/;

/**
 * Yards to the opponent's goal line of a ball position in lower case: `own 35` (also `-35`, `o35`) is 65, `opp 20` (also
 * `+20`) is 20, `50` is 50. Undefined for anything else, and for a bare number, which could lie on either side.
 */
export function yardsOfPosition(plain: string): number | undefined {
  if (plain === '50') return 50;
  const [, side, digits] = plain.match(YARD_LINE) ?? [];
  const line = Number(digits);
  if (side === undefined || line < 1 || line > 50) return undefined;
  return side === 'opp' || side === '+' ? line : 100 - line;
}

/** Yards to the opponent's goal line as the coach writes the ball position: 65 is `own 35`. */
export function writeFieldPosition(yards: number): string {
  if (yards === 50) return '50';
  return yards > 50 ? `own ${100 - yards}` : `opp ${yards}`;
}

/** Seconds left in the quarter of a clock such as `7:42`; undefined for anything else. */
export function secondsOfClock(text: string): number | undefined {
  const [, minutes, seconds] = text.match(CLOCK) ?? [];
  return seconds === undefined ? undefined : Number(minutes) * 60 + Number(seconds);
}

/** Seconds left in the quarter as a clock: 462 is `7:42`. */
export function writeClock(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`;
}
