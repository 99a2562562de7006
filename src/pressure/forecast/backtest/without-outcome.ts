import type { ColumnName } from '../../../game/columns.ts';
import type { Film, FilmColumn } from '../../../game/film.ts';

/** Columns in which the targets are charted: nothing of them is known of a game still to come. */
export const OUTCOME_COLUMNS = [
  'motion',
  'play_kind',
  'option_tag',
  'concept',
  'protectors',
  'slide',
  'back_action',
  'backs_released',
  'time_to_throw',
  'target_zone',
  'target_depth',
  'gain',
  'result',
] as const satisfies readonly ColumnName[];

/** The chart with every outcome of these snaps not charted. */
export function withoutOutcome(chart: Film, rows: ArrayLike<number>): Film {
  const columns: Partial<Record<ColumnName, FilmColumn>> = { ...chart.columns };
  for (const name of OUTCOME_COLUMNS) {
    const column = chart.columns[name];
    if (column) columns[name] = blanked(column, rows);
  }
  return { ...chart, columns };
}

function blanked(column: FilmColumn, rows: ArrayLike<number>): FilmColumn {
  if (column.kind === 'code') {
    const codes = column.codes.slice();
    for (let i = 0; i < rows.length; i++) codes[rows[i] as number] = 0;
    return { ...column, codes };
  }
  const numbers = column.numbers.slice();
  for (let i = 0; i < rows.length; i++) numbers[rows[i] as number] = Number.NaN;
  return { kind: 'number', numbers };
}
