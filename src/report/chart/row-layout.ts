import { wrapText } from './wrap-text.ts';

/** Sizes of the charts, in pixels; text is never under 13. */
export const SIZE = { label: 14, cell: 13, line: 17, rowGap: 12, plot: 500, labelWidth: 210, labelGap: 14 } as const;

/** A label with its lines and its place. */
export interface PlacedRow {
  readonly lines: readonly string[];
  readonly top: number;
  readonly middle: number;
  /** Where the first line of the label stands, so that all its lines are centred on the row. */
  readonly firstLine: number;
  readonly bottom: number;
}

/**
 * Rows one below the other, each as high as its label needs.
 *
 * @param labels - one per row
 * @param least - least height of a row, pixels
 */
export function placeRows(
  labels: readonly string[],
  least: number,
): { readonly rows: readonly PlacedRow[]; readonly height: number } {
  let top = 0;
  const rows = labels.map((label) => {
    const lines = wrapText(label, SIZE.labelWidth, { size: SIZE.label });
    const height = Math.max(least, lines.length * SIZE.line + SIZE.rowGap);
    const middle = top + height / 2;
    const firstLine = middle - ((lines.length - 1) * SIZE.line) / 2;
    const row = { lines, top, middle, firstLine, bottom: top + height };
    top += height;
    return row;
  });
  return { rows, height: top };
}
