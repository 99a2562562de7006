import type { Share } from '../../stats/share.ts';
import { percent, percentRange } from './percent.ts';

/** Below this many snaps a share is called thin (TRADE common practice: cells under about 20 are wide). */
export const THIN_SNAPS = 20;

/**
 * A share with its count and interval, as every share on the page is written.
 *
 * @example shareWords(share(31, 58)) // "31 of 58 (53%, 41-66%)"
 * @example shareWords(share(0, 0)) // "no snaps"
 */
export function shareWords(value: Share): string {
  if (value.estimate === null) return 'no snaps';
  return `${countWords(value)} (${percent(value.estimate)}, ${percentRange(value.low, value.high)})`;
}

/**
 * The bare count of a share.
 *
 * @example countWords(share(31, 58)) // "31 of 58"
 */
export function countWords(value: Share): string {
  return value.trials === 0 ? 'no snaps' : `${plainCount(value.count)} of ${plainCount(value.trials)}`;
}

/** Whether the share rests on at least one but fewer than {@link THIN_SNAPS} snaps. */
export function isThin(value: Share): boolean {
  return value.trials > 0 && value.trials < THIN_SNAPS;
}

function plainCount(count: number): string {
  return Number.isInteger(count) ? String(count) : count.toFixed(1);
}
