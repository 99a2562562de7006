/** A share as whole percent: 0.314 is `31%`. */
export function percentWords(share: number): string {
  return `${wholePercent(share)}%`;
}

/** A share as a whole number of hundredths, for the bounds in `31% [24-39]`. */
export function wholePercent(share: number): string {
  return String(Math.round(100 * share));
}
