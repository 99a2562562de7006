import { type ColumnName, FILM_COLUMNS } from '../../src/game/columns.ts';
import type { SnapRecord } from '../../src/game/film.ts';
import { toCsv } from '../../src/ingest/write-csv.ts';
import type { Random } from '../../src/stats/random.ts';

/** Writes snaps as a sheet with the given headers, in the words a charter would type. */
export function sheetOf(records: readonly SnapRecord[], headers: readonly ColumnName[]): string {
  return toCsv([headers, ...records.map((record) => headers.map((header) => written(header, record[header])))]);
}

/** Blanks cells at random: real charting is patchy. `gaps` gives the share of snaps a column was not charted on. */
export function leaveGaps(
  records: readonly SnapRecord[],
  gaps: Readonly<Partial<Record<ColumnName, number>>>,
  random: Random,
): SnapRecord[] {
  return records.map((record) =>
    Object.fromEntries(
      Object.entries(record).filter(([column]) => random.uniform() >= (gaps[column as ColumnName] ?? 0)),
    ),
  );
}

function written(header: ColumnName, value: string | number | undefined): string {
  if (value === undefined) return '';
  const form = FILM_COLUMNS.find((column) => column.name === header)?.cell.form;
  if (form === 'clock') return `${Math.floor(Number(value) / 60)}:${String(Number(value) % 60).padStart(2, '0')}`;
  if (form === 'field') return fieldPosition(Number(value));
  return String(value);
}

function fieldPosition(yardsToGoal: number): string {
  if (yardsToGoal === 50) return '50';
  return yardsToGoal > 50 ? `own ${100 - yardsToGoal}` : `opp ${yardsToGoal}`;
}
