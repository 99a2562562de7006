import { columnLetter } from './column-letter.ts';
import { detached } from './column-store.ts';
import type { RowProblem } from './row-problem.ts';
import type { PlannedColumn } from './sheet-plan.ts';

/** What a problem says of its place: the column, and the cell as written. */
export type ProblemPlace = Pick<RowProblem, 'columnLetter' | 'header' | 'found'>;

/** Where a column's cell stands in the sheet, and what is written there. */
export function placeOf({ index, header, textOf }: PlannedColumn, cells: readonly string[]): ProblemPlace {
  if (index < 0) return { header, found: asWritten(textOf(cells)) };
  return { columnLetter: columnLetter(index), header: header.trim(), found: asWritten(cells[index] ?? '') };
}

/** Without the half of a line end that a row's last cell may carry. */
export function withoutReturn(cell: string): string {
  return cell.endsWith('\r') ? cell.slice(0, -1) : cell;
}

/** As {@link withoutReturn}; a copy, so that the file's text can go. */
export function asWritten(cell: string): string {
  return detached(withoutReturn(cell));
}
