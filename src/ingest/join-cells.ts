import type { ColumnName } from '../game/columns.ts';

/** Our columns that a sheet may spread over two cells. */
export const JOINABLE = ['ball_on', 'clock', 'score_margin'] as const satisfies readonly ColumnName[];

/** One of {@link JOINABLE}. */
export type JoinableColumn = (typeof JOINABLE)[number];

/** Whether a column may be read from two cells. */
export function isJoinable(column: ColumnName): column is JoinableColumn {
  return JOINABLE.some((name) => name === column);
}

/**
 * Two cells that belong together as one: a yard line and its side (`35`, `own` is `own 35`), minutes and seconds (`7`,
 * `5` is `7:05`), a score and the one to take away (`14`, `7` is `7`). Blank when neither is charted, and for clock and
 * score when one is not: half of them says nothing.
 */
export function joinCells(column: JoinableColumn, first: string, second: string): string {
  const [one, other] = [first.trim(), second.trim()];
  switch (column) {
    case 'ball_on':
      return one === '' ? '' : `${other} ${one}`.trim();
    case 'clock':
      return one === '' || other === '' ? '' : `${one}:${other.padStart(2, '0')}`;
    case 'score_margin':
      return one === '' || other === '' ? '' : difference(one, other);
    default:
      return column satisfies never;
  }
}

/** The difference of two scores; both as written when they are none, so that the fault shows them. */
function difference(one: string, other: string): string {
  const whole = /^\d+$/;
  return whole.test(one) && whole.test(other) ? String(Number(one) - Number(other)) : `${one} less ${other}`;
}
