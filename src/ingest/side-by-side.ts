import * as z from 'zod';
import { columnIndex } from './column-letter.ts';

/** A sheet that lists several snaps beside one another: where the first one stands, and how many there are. */
export const sideBySideSchema = z.strictObject({
  first: z
    .string()
    .regex(/^[A-Z]{1,3}$/, 'is not the letter of a column')
    .describe('letter of the first column of the first snap'),
  width: figure(2).describe('columns of one snap'),
  snaps: figure(2).describe('snaps in a row'),
});

/** How snaps stand beside one another in a row; other columns belong to all of them. */
export type SideBySide = z.infer<typeof sideBySideSchema>;

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

/** A count, written as text because a profile keeps every value as it stands. */
function figure(least: number) {
  return z
    .string()
    .regex(/^\d{1,2}$/, 'is not a number of columns')
    .transform(Number)
    .refine((value) => value >= least, { error: `is less than ${least}` });
}
