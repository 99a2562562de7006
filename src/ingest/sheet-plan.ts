import type { ColumnDefinition, ColumnName } from '../game/columns.ts';
import type { CellReading } from './cell-reading.ts';
import type { RowTest } from './profile-condition.ts';
import type { RowProblem } from './row-problem.ts';

/**
 * How one of our columns is filled from a row: `index` is the cell it is read from, -1 when it is worked out from
 * several; `read` says what a text means. Messages name the sheet's `header`.
 */
export interface PlannedColumn {
  readonly name: ColumnName;
  readonly kind: ColumnDefinition['kind'];
  readonly index: number;
  readonly header: string;
  /** The text the column is read from: the cell as written, or what was worked out. */
  readonly textOf: (cells: readonly string[]) => string;
  /** What such a text means. */
  readonly read: (written: string) => CellReading;
}

/** How a sheet with these headers is read. When `refused`, a fault among the problems says why nothing can be. */
export interface SheetPlan {
  readonly columns: readonly PlannedColumn[];
  /** Columns every snap needs, as far as they are read from cells of a foreign sheet. */
  readonly needed: readonly PlannedColumn[];
  readonly keeps: RowTest;
  readonly unmapped: readonly string[];
  readonly problems: readonly RowProblem[];
  readonly refused: boolean;
}

/** Columns found for a sheet, before its headers are judged. */
export interface ColumnMatch {
  readonly columns: readonly PlannedColumn[];
  readonly keeps: RowTest;
  readonly used: ReadonlySet<number>;
  /** Columns a profile names by letter; their headers need not differ from others. */
  readonly byLetter: ReadonlySet<number>;
  readonly problems: readonly RowProblem[];
}

/** A sheet's header row, to be matched with our columns. */
export interface HeaderRow {
  readonly file: string;
  readonly row: number;
  readonly headers: readonly string[];
}
