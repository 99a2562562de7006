import { countBy, mostFirst } from '../../game/by-word.ts';
import type { TopCounts } from './tables-result.ts';

/** More would not be read; common practice, no source. */
const MOST = 6;

/** The words of some snaps by count, and how many snaps had one; ties in the order of the alphabet. */
export function topCounts(snaps: readonly number[], wordAt: (row: number) => string | undefined): TopCounts {
  const counts = countBy(snaps, wordAt);
  const trials = [...counts.values()].reduce((sum, count) => sum + count, 0);
  const top = mostFirst(counts).map(([name, count]) => ({ name, count }));
  return { top: top.slice(0, MOST), trials };
}
