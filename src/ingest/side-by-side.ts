import { columnIndex } from './column-letter.ts';
import type { SideBySide } from './side-by-side-schema.ts';

export type { SideBySide };

/**
 * The snaps of one row, each as a row of its own: the columns all share, with the columns of one snap in the place of
 * the first. Snaps that are blank are left out; a row that is blank throughout stays one blank row.
 */
export function unfoldRow(layout: SideBySide, cells: readonly string[]): readonly (readonly string[])[] {
  const start = columnIndex(layout.first);
  const before = cells.slice(0, start);
  const after = cells.slice(start + layout.width * layout.snaps);
  const snaps = Array.from({ length: layout.snaps }, (_, i) => blockAt(cells, start + i * layout.width, layout.width));
  const charted = snaps.filter((block) => block.some((cell) => cell.trim() !== ''));
  return (charted.length > 0 ? charted : snaps.slice(0, 1)).map((block) => [...before, ...block, ...after]);
}

/** The headers as one snap has them: those of the first snap, and those that all share. */
export function unfoldHeaders(layout: SideBySide, headers: readonly string[]): readonly string[] {
  const start = columnIndex(layout.first);
  const rest = headers.slice(start + layout.width * layout.snaps);
  return [...headers.slice(0, start), ...blockAt(headers, start, layout.width), ...rest];
}

/** A short row is filled up, so that what all snaps share keeps its place. */
function blockAt(cells: readonly string[], start: number, width: number): string[] {
  return Array.from({ length: width }, (_, i) => cells[start + i] ?? '');
}
