import type { ColumnName } from '../../game/columns.ts';
import { type ChartSheet, columnsWith, type SnapCells, sheetHead, sheetLine } from '../../season/chart-sheet.ts';

/** Writes a sheet again and again while it is typed: a line that did not change is not written again. */
export function sheetWriter({
  remarks,
  columns: first,
}: Pick<ChartSheet, 'remarks' | 'columns'>): (snaps: readonly SnapCells[]) => string {
  let columns: readonly ColumnName[] = first;
  let lines = new WeakMap<SnapCells, string>();
  const lineOf = (snap: SnapCells) => {
    const line = lines.get(snap) ?? sheetLine(snap, columns);
    lines.set(snap, line);
    return line;
  };
  return (snaps) => {
    const now = columnsWith(columns, snaps.slice(-1).concat(snaps.filter((snap) => !lines.has(snap))));
    if (now !== columns) {
      columns = now;
      lines = new WeakMap();
    }
    return sheetHead({ remarks, columns }) + snaps.map(lineOf).join('');
  };
}
