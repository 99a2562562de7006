import { describeReason, type RowProblem } from './row-problem.ts';

/** Stands between the cells of a row that is kept; the control character made for this. */
const SEPARATOR = '\u001f';

/**
 * A row kept out of the numbers: its 1-based spreadsheet row, its cells as written, and why. There may be a million of
 * them, so that cells and reasons are kept as one text and the problems they come from, and written out when asked for.
 */
export class RejectedRow {
  readonly row: number;
  /** Each fault found in it; there is at least one. */
  readonly faults: readonly RowProblem[];
  /** The cells in one text; apart where one of them holds what parts them. */
  private readonly written: string | readonly string[];

  /** A row with its cells and all that was found in it. */
  constructor(row: number, cells: readonly string[], found: readonly RowProblem[]) {
    this.row = row;
    this.written = cells.some((cell) => cell.includes(SEPARATOR)) ? cells : cells.join(SEPARATOR);
    this.faults = found.every(isFault) ? found : found.filter(isFault);
  }

  /** The cells as they were written. */
  get cells(): readonly string[] {
    return typeof this.written === 'string' ? this.written.split(SEPARATOR) : this.written;
  }

  /** Each fault as one sentence. */
  get reasons(): readonly string[] {
    return this.faults.map(describeReason);
  }
}

function isFault({ severity }: RowProblem): boolean {
  return severity === 'fault';
}
