import type { TopLevelSpec } from 'vega-lite';
import { type Layer, placedAt, valueAt } from './channel.ts';
import { CHART_CONFIG, PAINT } from './chart-config.ts';
import type { IntervalAxis, IntervalRow } from './interval-row.ts';
import { type PlacedRow, placeRows, SIZE } from './row-layout.ts';

/**
 * Dots with interval lines on one scale, row by row in the order given. Thin rows are open and dashed, rows without
 * snaps hatched, nothing is dropped.
 *
 * @param rows - at least one, with unique ids
 */
export function intervalSpec(rows: readonly IntervalRow[], axis: IntervalAxis): TopLevelSpec {
  const least = rows.some((row) => row.second !== null) ? 42 : 34;
  const labels = rows.map((row) => row.label);
  const { rows: places, height } = placeRows(labels, least);
  const data = rows.map((row, i) => placedRow(row, places[i]));
  const marked = data.filter((row) => row.state !== 'none');
  return {
    config: CHART_CONFIG,
    width: SIZE.plot,
    height,
    data: { values: data },
    layer: [
      ...hatchLayers(data),
      ...referenceLayers(axis),
      lineLayer(marked, axis),
      dotLayer(marked, axis),
      ...secondLayers(marked, axis),
      labelLayer(),
      noteLayer(),
    ],
  };
}

type Placed = Omit<IntervalRow, 'label'> &
  Omit<PlacedRow, 'lines'> & { readonly lines: string[]; readonly under: number };

function placedRow({ label: _label, ...row }: IntervalRow, place: PlacedRow | undefined): Placed {
  const { top, middle, bottom, firstLine, lines } = place ?? NOWHERE;
  return { ...row, top, middle, bottom, firstLine, lines: [...lines], under: middle + UNDER };
}

const NOWHERE: PlacedRow = { top: 0, middle: 0, bottom: 0, firstLine: 0, lines: [] };

/** How far below the line the second mark stands, pixels. */
const UNDER = 11;

function hatchLayers(data: readonly Placed[]): readonly Layer[] {
  const none = data.filter((row) => row.state === 'none');
  if (none.length === 0) return [];
  const layer: Layer = {
    data: { values: none },
    mark: { type: 'rect', fill: PAINT.hatch, stroke: PAINT.rule },
    encoding: { y: placedAt('top'), y2: { field: 'bottom' }, x: { value: 0 }, x2: { value: SIZE.plot } },
  };
  return [layer];
}

function referenceLayers({ reference }: IntervalAxis): readonly Layer[] {
  if (reference === null) return [];
  const data = { values: [{ at: reference.at, label: reference.label }] };
  const x = { field: 'at', type: 'quantitative' as const };
  return [
    { data, mark: { type: 'rule', color: PAINT.ink, strokeWidth: 1.5, strokeDash: [2, 3] }, encoding: { x } },
    {
      data,
      mark: { type: 'text', baseline: 'bottom', dy: -6 },
      encoding: { x, y: { value: 0 }, text: { field: 'label' } },
    },
  ];
}

function lineLayer(values: Placed[], axis: IntervalAxis): Layer {
  return {
    data: { values },
    mark: { type: 'rule', strokeWidth: 2, color: PAINT.ink },
    encoding: {
      y: placedAt('middle'),
      x: valueAt('low', axis),
      x2: { field: 'high' },
      strokeDash: { condition: { test: IS_THIN, value: [5, 4] }, value: [1, 0] },
    },
  };
}

const IS_THIN = "datum.state === 'thin'";

function dotLayer(values: Placed[], axis: IntervalAxis): Layer {
  return {
    data: { values },
    mark: { type: 'point', size: 95, filled: true, opacity: 1, stroke: PAINT.ink, strokeWidth: 2 },
    encoding: {
      y: placedAt('middle'),
      x: valueAt('value', axis),
      fill: { condition: { test: IS_THIN, value: PAINT.paper }, value: PAINT.ink },
    },
  };
}

function secondLayers(data: readonly Placed[], axis: IntervalAxis): readonly Layer[] {
  const values = data.filter((row) => row.second !== null);
  if (values.length === 0) return [];
  const layer: Layer = {
    data: { values },
    mark: {
      type: 'point',
      shape: 'diamond',
      size: 70,
      opacity: 1,
      fill: PAINT.paper,
      stroke: PAINT.ink,
      strokeWidth: 1.5,
    },
    encoding: { y: placedAt('under'), x: valueAt('second', axis) },
  };
  return [layer];
}

function labelLayer(): Layer {
  return {
    mark: { type: 'text', align: 'right', baseline: 'middle', fontSize: SIZE.label, lineHeight: SIZE.line },
    encoding: { y: placedAt('firstLine'), x: { value: -SIZE.labelGap }, text: { field: 'lines' } },
  };
}

function noteLayer(): Layer {
  return {
    mark: { type: 'text', align: 'left', baseline: 'middle' },
    encoding: {
      y: placedAt('middle'),
      x: { value: SIZE.plot + SIZE.labelGap },
      text: { field: 'note' },
    },
  };
}
