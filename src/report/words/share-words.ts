import { THIN_SNAPS } from '../../game/thin-snaps.ts';
import type { Share } from '../../stats/share.ts';
import { fixed } from './number-words.ts';
import { percent, percentRange } from './percent.ts';

/** A count and its denominator; a {@link Share} is one. */
export interface Count {
  readonly count: number;
  readonly trials: number;
}

/**
 * A share as every page writes it.
 *
 * @example shareWords({ count: 19, trials: 23 }) // "19 of 23 (83%)"
 * @example shareWords({ count: 0, trials: 0 }) // "no snaps"
 */
export function shareWords({ count, trials }: Count): string {
  return trials === 0 ? 'no snaps' : `${countWords({ count, trials })} (${percent(count / trials)})`;
}

/**
 * A share with the interval of the long-run rate, for the tables of method.
 *
 * @example shareWithInterval(share(31, 58)) // "31 of 58 (53%), long run 41-66%"
 */
export function shareWithInterval(value: Share): string {
  return value.trials === 0 ? 'no snaps' : `${shareWords(value)}, long run ${percentRange(value.low, value.high)}`;
}

/**
 * The bare count of a share.
 *
 * @example countWords(share(31, 58)) // "31 of 58"
 */
export function countWords({ count, trials }: Count): string {
  return trials === 0 ? 'no snaps' : `${plainCount(count)} of ${plainCount(trials)}`;
}

/** Whether the share rests on at least one but fewer than {@link THIN_SNAPS} snaps. */
export function isThin({ trials }: Pick<Count, 'trials'>): boolean {
  return trials > 0 && trials < THIN_SNAPS;
}

/** What follows a share in a sentence that rests on too few snaps; nothing after any other. */
export function thinWords(count: Pick<Count, 'trials'>): string {
  return isThin(count) ? ', thin' : '';
}

/**
 * A range of whole snaps to expect.
 *
 * @param of - snaps expected in all; rounded
 * @example expectWords({ low: 9, high: 14 }, 20.2) // "expect 9-14 of 20"
 */
export function expectWords({ low, high }: { readonly low: number; readonly high: number }, of: number): string {
  return `expect ${low === high ? low : `${low}-${high}`} of ${Math.round(of)}`;
}

function plainCount(count: number): string {
  return Number.isInteger(count) ? String(count) : fixed(count, 1);
}
