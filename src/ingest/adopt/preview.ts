import { type ColumnName, FILM_COLUMNS } from '../../game/columns.ts';
import { type Film, numberAt, textAt } from '../../game/film.ts';
import { writeClock, writeFieldPosition } from '../../game/written-numbers.ts';

/** Snaps shown to the coach, one a column, with our columns down the side. */
export interface SnapPreview {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Longer texts are cut, so that ten snaps stand beside one another. */
const CELL_WIDTH = 12;

/** The first snaps of a chart as they were understood, by the row of the sheet they stand in. */
export function previewSnaps(chart: Film, count: number): SnapPreview {
  const snaps = Array.from({ length: Math.min(count, chart.size) }, (_, i) => i);
  const columns = FILM_COLUMNS.filter(({ name }) => chart.columns[name] !== undefined);
  const rows = columns.map(({ name }) => [name, ...snaps.map((i) => cut(cellText(chart, name, i)))]);
  return { header: ['', ...snaps.map((i) => `row ${chart.rowOf[i] as number}`)], rows };
}

function cellText(chart: Film, name: ColumnName, index: number): string {
  const value = numberAt(chart, name, index);
  if (value === undefined) return textAt(chart, name, index) ?? '';
  if (name === 'ball_on') return writeFieldPosition(value);
  return name === 'clock' ? writeClock(value) : String(value);
}

function cut(text: string): string {
  return text.length > CELL_WIDTH ? `${text.slice(0, CELL_WIDTH - 1)}\u2026` : text;
}
