import { describeReason, type RowProblem } from './row-problem.ts';

/**
 * A row kept out of the numbers: its 1-based spreadsheet row, its cells as written, and why. There may be a million of
 * them, so that cells and reasons are kept as one text and the problems they come from, and written out when asked for.
 */
export class RejectedRow {
  readonly row: number;
  private readonly written: string;
  private readonly faults: readonly RowProblem[];

  /** A row with its cells and all that was found in it. */
  constructor(row: number, cells: readonly string[], found: readonly RowProblem[]) {
    this.row = row;
    this.written = JSON.stringify(cells);
    this.faults = found.filter(({ severity }) => severity === 'fault');
  }

  /** The cells as they were written. */
  get cells(): readonly string[] {
    return JSON.parse(this.written) as string[];
  }

  /** Each fault as one sentence. */
  get reasons(): readonly string[] {
    return this.faults.map(describeReason);
  }
}
