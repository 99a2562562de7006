import type { TopLevelSpec } from 'vega-lite';
import { type Layer, placedAt } from './channel.ts';
import { CHART_CONFIG, PAINT, tintOf } from './chart-config.ts';
import type { Grid } from './matrix-grid.ts';
import { type PlacedRow, placeRows, SIZE } from './row-layout.ts';
import { wrapText } from './wrap-text.ts';

/** Size of a cell and of the note column beside the row labels, pixels. */
const CELL = { width: 84, least: 32, note: 96, gap: 3 } as const;

/**
 * A matrix with the number written in every cell, row by row and column by column in the order given. The tint only
 * repeats the number; a cell without snaps is hatched.
 *
 * @param grid - at least one row and one column
 */
export function matrixSpec(grid: Grid): TopLevelSpec {
  const labels = grid.rows.map((row) => row.label);
  const { rows: places, height } = placeRows(labels, CELL.least);
  const width = CELL.note + grid.columns.length * CELL.width;
  const cells = cellsOf(grid, places);
  const notes = notesOf(grid, places);
  const layer = [
    cellLayer(cells),
    textLayer(cells),
    noteLayer(notes),
    labelLayer(notes),
    headingLayer(headingsOf(grid)),
  ];
  return { config: CHART_CONFIG, width, height, data: { values: [] }, layer };
}

interface PlacedCell {
  readonly text: string;
  readonly fill: string;
  readonly left: number;
  readonly right: number;
  readonly centre: number;
  readonly top: number;
  readonly bottom: number;
  readonly middle: number;
}

function cellsOf(grid: Grid, places: readonly PlacedRow[]): PlacedCell[] {
  return grid.rows.flatMap((row, i) =>
    row.cells.map((cell, k) => {
      const { top, bottom, middle } = places[i] ?? NOWHERE;
      const left = CELL.note + k * CELL.width;
      return {
        text: cell.text,
        fill: cell.state === 'none' ? PAINT.hatch : tintOf(cell.strength),
        left: left + CELL.gap,
        right: left + CELL.width,
        centre: left + (CELL.width + CELL.gap) / 2,
        top: top + CELL.gap,
        bottom,
        middle: middle + CELL.gap / 2,
      };
    }),
  );
}

const NOWHERE = { top: 0, bottom: 0, middle: 0 };

interface PlacedNote {
  readonly note: string;
  readonly lines: string[];
  readonly middle: number;
  readonly firstLine: number;
}

function notesOf(grid: Grid, places: readonly PlacedRow[]): PlacedNote[] {
  return grid.rows.map((row, i) => ({
    note: row.note,
    lines: [...(places[i]?.lines ?? [])],
    middle: (places[i]?.middle ?? 0) + CELL.gap / 2,
    firstLine: (places[i]?.firstLine ?? 0) + CELL.gap / 2,
  }));
}

interface PlacedHeading {
  readonly lines: string[];
  readonly at: number;
  readonly up: number;
}

function headingsOf(grid: Grid): PlacedHeading[] {
  const headings = grid.columns.map((column, k) => headingOf(column, CELL.note + k * CELL.width, CELL.width));
  return [headingOf(grid.noteTitle, 0, CELL.note), ...headings];
}

function headingOf(text: string, left: number, width: number): PlacedHeading {
  const lines = wrapText(text, width - 2 * CELL.gap, { size: SIZE.cell });
  return { lines: [...lines], at: left + (width + CELL.gap) / 2, up: -6 - (lines.length - 1) * HEADING_LINE };
}

const HEADING_LINE = 15;

function cellLayer(values: PlacedCell[]): Layer {
  return {
    data: { values },
    mark: { type: 'rect', stroke: PAINT.rule, strokeWidth: 0.5 },
    encoding: {
      x: placedAt('left'),
      x2: { field: 'right' },
      y: placedAt('top'),
      y2: { field: 'bottom' },
      fill: { field: 'fill', type: 'nominal', scale: null },
    },
  };
}

function textLayer(values: PlacedCell[]): Layer {
  return {
    data: { values },
    mark: { type: 'text', baseline: 'middle' },
    encoding: { x: placedAt('centre'), y: placedAt('middle'), text: { field: 'text' } },
  };
}

function noteLayer(values: PlacedNote[]): Layer {
  return {
    data: { values },
    mark: { type: 'text', baseline: 'middle' },
    encoding: { x: { value: CELL.note / 2 }, y: placedAt('middle'), text: { field: 'note' } },
  };
}

function labelLayer(values: PlacedNote[]): Layer {
  return {
    data: { values },
    mark: { type: 'text', align: 'right', baseline: 'middle', fontSize: SIZE.label, lineHeight: SIZE.line },
    encoding: { x: { value: -SIZE.labelGap }, y: placedAt('firstLine'), text: { field: 'lines' } },
  };
}

function headingLayer(values: PlacedHeading[]): Layer {
  return {
    data: { values },
    mark: { type: 'text', baseline: 'bottom', lineHeight: HEADING_LINE },
    encoding: {
      x: placedAt('at'),
      y: placedAt('up'),
      text: { field: 'lines' },
    },
  };
}
