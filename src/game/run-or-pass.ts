import type { ColumnName } from './columns.ts';

/** The kinds of play that are runs. */
export const RUN_KINDS: readonly string[] = ['run', 'quarterback_run'];

/** How a pass play ends when nobody throws: whatever kind was charted, the snap was a pass. */
export const PASS_ENDINGS: readonly string[] = ['scramble', 'sack'];

/** Columns that say something of a pass only; on a run the cell is left out of every number. */
export const PASS_COLUMNS: readonly ColumnName[] = [
  ...(['protectors', 'slide', 'back_action', 'backs_released'] as const),
  ...(['time_to_throw', 'target_zone', 'target_depth'] as const),
];

/** Whether a snap was a run: its kind is one, and it ended in neither a sack nor a scramble. */
export function wasRun(kind: string | undefined, result: string | undefined): boolean {
  return RUN_KINDS.includes(kind ?? '') && !PASS_ENDINGS.includes(result ?? '');
}
