import type { ColumnName } from '../../game/columns.ts';
import type { SnapCells } from '../../season/chart-sheet.ts';

/** The snap with one cell changed; an empty text takes the cell away. */
export function withCell(snap: SnapCells, column: ColumnName, text: string): SnapCells {
  if (text !== '') return { ...snap, [column]: text };
  const { [column]: _, ...rest } = snap;
  return rest;
}
