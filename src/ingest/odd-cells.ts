import { type CodeLane, lookCloser, type NumberLane, ODD } from './cell-lane.ts';
import type { RowProblem } from './row-problem.ts';

/** A row of a sheet: its cells, and its 1-based spreadsheet row. */
export interface SheetRow {
  readonly cells: readonly string[];
  readonly row: number;
}

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
    const { finding, isGoal, value } = lookCloser(lane, cells);
    const toGoal = isGoal ? yardsToGoal(lanes, cells) : undefined;
    storeAt(lane, index, toGoal ?? value);
    // What differs from row to row stands first: a spread at the beginning makes an object four times as large.
    return toGoal !== undefined || finding === undefined ? [] : [{ file, row, ...finding }];
  });
}

/** The distance of a snap with goal to go is that to the goal line; undefined where no ball position was charted. */
function yardsToGoal(lanes: readonly (CodeLane | NumberLane)[], cells: readonly string[]): number | undefined {
  const column = lanes.find((lane) => lane.column.name === 'ball_on')?.column;
  const reading = column?.read(column.textOf(cells));
  return reading?.kind === 'value' ? Number(reading.value) : undefined;
}

function storeAt({ store }: CodeLane | NumberLane, index: number, value: number): void {
  if (store.kind === 'code') store.codes[index] = value;
  else store.numbers[index] = value;
}
