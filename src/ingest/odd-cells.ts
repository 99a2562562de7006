import { type CodeLane, lookCloser, type NumberLane, ODD } from './cell-lane.ts';
import type { CellReading } from './cell-reading.ts';
import { columnLetter } from './column-letter.ts';
import { detached } from './column-store.ts';
import type { RowProblem } from './row-problem.ts';
import type { PlannedColumn } from './sheet-plan.ts';

/** A row of a sheet: its cells, and its 1-based spreadsheet row. */
export interface SheetRow {
  readonly cells: readonly string[];
  readonly row: number;
}

/** What a problem says of its place: the column, and the cell as written. */
export type ProblemPlace = Pick<RowProblem, 'columnLetter' | 'header' | 'found'>;

/**
 * The problems of the cells in a row that could not simply be read. Values that only carry a remark are stored at
 * `index` on the way.
 */
export function lookAtOddCells(
  lanes: readonly (CodeLane | NumberLane)[],
  { cells, row }: SheetRow,
  { file, index }: { readonly file: string; readonly index: number },
): RowProblem[] {
  return lanes.flatMap((lane) => {
    const written = lane.column.textOf(cells);
    const learnt = lane.cache.get(written);
    if (learnt !== undefined && learnt !== ODD) return [];
    const { reading, value } = lookCloser(lane, written);
    storeAt(lane, index, value);
    const problem = problemOf(reading);
    return problem === undefined ? [] : [{ ...placeOf(lane.column, cells), ...problem, file, row }];
  });
}

/** Where a column's cell stands in the sheet, and what is written there. */
export function placeOf({ index, header, textOf }: PlannedColumn, cells: readonly string[]): ProblemPlace {
  if (index < 0) return { header, found: asWritten(textOf(cells)) };
  return { columnLetter: columnLetter(index), header: header.trim(), found: asWritten(cells[index] ?? '') };
}

/** Without the half of a line end that a row's last cell may carry; a copy, so that the file's text can go. */
export function asWritten(cell: string): string {
  return detached(cell.endsWith('\r') ? cell.slice(0, -1) : cell);
}

function storeAt({ store }: CodeLane | NumberLane, index: number, value: number): void {
  if (store.kind === 'code') store.codes[index] = value;
  else store.numbers[index] = value;
}

function problemOf(reading: CellReading): Pick<RowProblem, 'severity' | 'rule' | 'suggestion'> | undefined {
  switch (reading.kind) {
    case 'blank':
      return undefined;
    case 'value':
      return reading.remark === undefined ? undefined : { severity: 'warning', rule: reading.remark };
    case 'fault': {
      const { rule, suggestion } = reading;
      return { severity: 'fault', rule, ...(suggestion === undefined ? {} : { suggestion }) };
    }
    default:
      return reading satisfies never;
  }
}
