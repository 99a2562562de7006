import type { Film } from '../game/film.ts';
import type { Profile } from './profile.ts';
import type { RejectedRow } from './rejected-row.ts';
import type { RowProblem } from './row-problem.ts';
import type { SheetKind } from './sheet-kind.ts';

/** How a sheet is to be read. */
export interface SheetOptions {
  readonly kind: SheetKind;
  readonly profile?: Profile;
  /** Faults found outside the sheet, by row: the row is kept out of the chart, with its cells and this reason. */
  readonly leaveOut?: ReadonlyMap<number, RowProblem>;
}

/**
 * A sheet as read. `rowsRead` (data rows that are not blank) = snaps in `chart` + `rejected` + `leftOut` (rows the
 * profile's `keep_when` or `drop_when` leaves out), unless the sheet as a whole was refused; `blankRows` come on top.
 * `headers` are as written, `unmapped` those of them that feed no column.
 */
export interface SheetReading {
  readonly chart: Film;
  readonly problems: readonly RowProblem[];
  readonly rejected: readonly RejectedRow[];
  readonly headers: readonly string[];
  readonly unmapped: readonly string[];
  readonly delimiter: string;
  readonly encoding: string;
  readonly rowsRead: number;
  readonly blankRows: number;
  readonly leftOut: number;
}
