/** The day on the wall of whoever works here, YYYY-MM-DD: on a Friday night in America it is Saturday elsewhere. */
export function localDay(now: Date): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
