/**
 * A list of `size` words in which each word keeps close to its share from the first entry on: the next word is always the
 * one furthest behind.
 *
 * @param weights - a worth of at least 0 for every word
 * @returns words of positive weight only; empty when there is none
 */
export function spreadEvenly(weights: ReadonlyMap<string, number>, size: number): readonly string[] {
  const present = [...weights].filter(([, weight]) => weight > 0);
  const total = present.reduce((sum, [, weight]) => sum + weight, 0);
  if (total === 0) return [];
  const given = present.map(() => 0);
  return Array.from({ length: size }, (_, at) => {
    const behind = present.map(([, weight], i) => (weight / total) * (at + 1) - (given[i] as number));
    const next = behind.reduce((best, value, i) => (value > (behind[best] as number) + 1e-9 ? i : best), 0);
    given[next] = (given[next] as number) + 1;
    return present[next]?.[0] ?? '';
  });
}
