/**
 * Points with a sign, a true minus and one decimal; `0.0` for what rounds to nothing.
 *
 * @example signedPoints(-1.23) // "−1.2"
 */
export function signedPoints(points: number): string {
  const rounded = Math.abs(points).toFixed(1);
  if (Number(rounded) === 0) return '0.0';
  return `${points > 0 ? '+' : '\u2212'}${rounded}`;
}
