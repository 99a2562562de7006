import type { TopLevelSpec } from 'vega-lite';
import type { IntervalAxis } from './interval-row.ts';

/** One layer of a layered chart. */
export type Layer = Extract<TopLevelSpec, { layer: unknown }>['layer'][number];

/** A place across or down that was laid out in pixels before; it has no scale and no axis. */
export function placedAt(field: string) {
  return { field, type: 'quantitative' as const, axis: null, scale: null };
}

/** A value on the chart's own axis. */
export function valueAt(field: string, { title, domain, format }: IntervalAxis) {
  const [first, last] = domain;
  const labels: AxisLabels = format === 'percent' ? PERCENT_LABELS : { format: '+.1f', tickCount: 6 };
  const scale = { domain: [first, last], nice: false, zero: false };
  return { field, type: 'quantitative' as const, scale, axis: { title, grid: true, ...labels } };
}

interface AxisLabels {
  readonly format: string;
  values?: number[];
  tickCount?: number;
}

const PERCENT_LABELS: AxisLabels = { format: '.0%', values: [0, 0.25, 0.5, 0.75, 1] };
