import type { ColumnName } from '../../game/columns.ts';
import { type ChartSheet, columnsWith, type SnapCells, sheetHead, sheetLine } from '../../season/chart-sheet.ts';

/** Writes a sheet again and again while it is typed: a line that did not change is not written again. */
export function sheetWriter({
  remarks,
  columns: first,
}: Pick<ChartSheet, 'remarks' | 'columns'>): (snaps: readonly SnapCells[]) => string {
  let columns: readonly ColumnName[] = first;
  let before: readonly SnapCells[] = [];
  let lines: readonly string[] = [];
  return (snaps) => {
    const { start, end } = changedPart(before, snaps);
    const now = columnsWith(columns, snaps.slice(start, snaps.length - end));
    const write = (some: readonly SnapCells[]) => some.map((snap) => sheetLine(snap, now));
    lines =
      now === columns
        ? [
            ...lines.slice(0, start),
            ...write(snaps.slice(start, snaps.length - end)),
            ...lines.slice(lines.length - end),
          ]
        : write(snaps);
    columns = now;
    before = snaps;
    return sheetHead({ remarks, columns }) + lines.join('');
  };
}

/** How many snaps at the start, and how many of the rest at the end, are the same in both. */
function changedPart(before: readonly SnapCells[], now: readonly SnapCells[]) {
  const most = Math.min(before.length, now.length);
  let start = 0;
  while (start < most && before[start] === now[start]) start++;
  let end = 0;
  while (end < most - start && before.at(-1 - end) === now.at(-1 - end)) end++;
  return { start, end };
}
