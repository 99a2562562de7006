/**
 * A share as a whole percent, never rounded onto 0 or 100 when it is neither.
 *
 * @param share - 0 to 1
 * @example percent(0.534) // "53%"
 * @example percent(0.002) // "under 1%"
 */
export function percent(share: number): string {
  if (share > 0 && share < 0.005) return 'under 1%';
  if (share < 1 && share >= 0.995) return 'over 99%';
  return `${Math.round(share * 100)}%`;
}

/**
 * A share with one decimal, for the tables of a backtest alone.
 *
 * @example percentToTenth(0.9534) // "95.3%"
 */
export function percentToTenth(share: number): string {
  return `${(100 * share).toFixed(1)}%`;
}

/**
 * Two shares as one range of percents.
 *
 * @param low - 0 to 1
 * @param high - 0 to 1, not below `low`
 * @example percentRange(0.407, 0.656) // "41-66%"
 */
export function percentRange(low: number, high: number): string {
  return `${Math.round(low * 100)}-${Math.round(high * 100)}%`;
}
