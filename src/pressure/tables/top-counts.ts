import type { TopCounts } from './tables-result.ts';

/** More would not be read; common practice, no source. */
const MOST = 6;

/** The words of some snaps by count, and how many snaps had one; ties in the order of the alphabet. */
export function topCounts(snaps: readonly number[], wordAt: (row: number) => string | undefined): TopCounts {
  const counts = new Map<string, number>();
  let trials = 0;
  for (const row of snaps) {
    const word = wordAt(row);
    if (word === undefined) continue;
    trials++;
    counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  const top = [...counts]
    .map(([name, count]) => ({ name, count }))
    .sort((a, b) => b.count - a.count || (a.name < b.name ? -1 : 1));
  return { top: top.slice(0, MOST), trials };
}
