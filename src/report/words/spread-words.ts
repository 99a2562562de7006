import type { Spread } from '../../stats/spread.ts';
import { signed } from './number-words.ts';

/**
 * Points saved against the base, as every page writes them.
 *
 * @example pointsWords(1.2) // "+1.2 points per 10 snaps"
 */
export function pointsWords(points: number): string {
  return `${signed(points)} points per 10 snaps`;
}

/**
 * Points with their interval, for tables with the unit in their heading.
 *
 * @example spreadWords({ mean: 0.42, low: -0.1, high: 0.9 }) // "+0.4 (−0.1 to +0.9)"
 */
export function spreadWords(points: Spread): string {
  return `${signed(points.mean)} (${signed(points.low)} to ${signed(points.high)})`;
}
