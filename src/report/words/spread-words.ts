import type { Spread } from '../../pressure/score/score-result.ts';
import { signed } from './number-words.ts';

/**
 * Points with their interval.
 *
 * @example spreadWords({ mean: 0.42, low: -0.1, high: 0.9 }) // "+0.4 (−0.1 to +0.9)"
 */
export function spreadWords(points: Spread): string {
  return `${signed(points.mean)} (${signed(points.low)} to ${signed(points.high)})`;
}
