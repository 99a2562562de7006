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
  const isOdd = (lane: CodeLane | NumberLane) => (lane.cache.get(lane.column.textOf(cells)) ?? ODD) === ODD;
  return lanes.filter(isOdd).flatMap((lane) => {
    const { reading, value } = lookCloser(lane, lane.column.textOf(cells));
    const toGoal = reading.kind === 'fault' && reading.goal ? yardsToGoal(lanes, cells) : undefined;
    storeAt(lane, index, toGoal ?? value);
    if (toGoal !== undefined) return [];
    const problem = problemOf(reading);
    return problem === undefined ? [] : [{ ...placeOf(lane.column, cells), ...problem, file, row }];
  });
}

/** The distance of a snap with goal to go is that to the goal line; undefined where no ball position was charted. */
function yardsToGoal(lanes: readonly (CodeLane | NumberLane)[], cells: readonly string[]): number | undefined {
  const column = lanes.find((lane) => lane.column.name === 'ball_on')?.column;
  const reading = column?.read(column.textOf(cells));
  return reading?.kind === 'value' ? Number(reading.value) : undefined;
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
      return reading.remark === undefined ? undefined : warningOf(reading.remark, reading.suggestion);
    case 'value':
      return reading.remark === undefined ? undefined : warningOf(reading.remark);
    case 'fault': {
      const { rule, suggestion } = reading;
      return { severity: 'fault', rule, ...(suggestion === undefined ? {} : { suggestion }) };
    }
    default:
      return reading satisfies never;
  }
}

function warningOf(rule: string, suggestion?: string): Pick<RowProblem, 'severity' | 'rule' | 'suggestion'> {
  return { severity: 'warning', rule, ...(suggestion === undefined ? {} : { suggestion }) };
}
