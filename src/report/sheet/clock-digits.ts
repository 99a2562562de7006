import { largestRemainder } from '../../stats/apportion.ts';

/** A call with the last digits of the clock on which to call it. */
export interface DigitCall {
  readonly call: string;
  /** How many of ten snaps. */
  readonly tenths: number;
  /** The digits in words, "0-3" or "4"; empty when the call rounds to none of ten. */
  readonly digits: string;
}

/**
 * A mix as last digits of the running clock, so that it can be kept without thinking: ten digits are shared out by
 * largest remainder, most called first.
 *
 * @param mix - shares of the calls of one situation, summing to about 1
 */
export function clockDigits(mix: readonly { readonly call: string; readonly share: number }[]): readonly DigitCall[] {
  const used = mix.filter((entry) => entry.share > 0);
  if (used.length === 0) return [];
  const ordered = [...used].sort((a, b) => b.share - a.share);
  const tenths = largestRemainder(
    ordered.map((entry) => entry.share),
    10,
  );
  let next = 0;
  return ordered.map(({ call }, i) => {
    const count = tenths[i] ?? 0;
    const digits = digitWords(next, count);
    next += count;
    return { call, tenths: count, digits };
  });
}

function digitWords(first: number, count: number): string {
  if (count === 0) return '';
  return count === 1 ? String(first) : `${first}-${first + count - 1}`;
}
