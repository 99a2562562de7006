import type { ColumnName } from '../../src/game/columns.ts';
import type { SnapRecord } from '../../src/game/film.ts';
import type { Random } from '../../src/stats/random.ts';
import { pick } from './pick.ts';

/** How often a second assistant writes something else, by column, and what he may write. */
const SLIPS: readonly { readonly column: ColumnName; readonly share: number; readonly words: readonly string[] }[] = [
  { column: 'slide', share: 0.2, words: ['left', 'right', 'man'] },
  { column: 'coverage_faced', share: 0.12, words: ['three_deep', 'two_deep', 'four_deep', 'man_free', 'zero'] },
  { column: 'back_action', share: 0.1, words: ['blocks', 'check_releases', 'releases_wide', 'releases_inside'] },
  { column: 'rushers_faced', share: 0.15, words: ['3', '4', '5', '6'] },
  { column: 'motion', share: 0.08, words: ['none', 'short', 'across', 'fast', 'shift'] },
  { column: 'play_kind', share: 0.04, words: ['quick', 'dropback', 'screen', 'movement'] },
];

/** The same game charted by a second assistant: some cells differ, as they do between two people. */
export function secondChart(snaps: readonly SnapRecord[], random: Random): SnapRecord[] {
  return snaps.map((snap) => {
    const changed: Record<string, string | number> = { ...snap } as Record<string, string | number>;
    for (const { column, share, words } of SLIPS) {
      const slips = random.uniform() < share;
      const word = pick(
        random,
        words.map((text) => [text, 1] as const),
      );
      const isRun = String(snap.play_kind).endsWith('run');
      if (slips && changed[column] !== undefined && !(column === 'play_kind' && isRun)) changed[column] = word;
    }
    return changed as SnapRecord;
  });
}
