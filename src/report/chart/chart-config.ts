import type { TopLevelSpec } from 'vega-lite';
import { SIZE } from './row-layout.ts';

/** Ink of the charts: CSS variables, so that one drawing serves both themes and the printer. */
export const PAINT = {
  ink: 'var(--ink)',
  soft: 'var(--soft)',
  paper: 'var(--paper)',
  rule: 'var(--rule)',
  grid: 'var(--grid)',
  /** Replaced by the chart's own hatch pattern when the drawing is cleaned. */
  hatch: 'url(#hatch)',
} as const;

/** The tint of a share of the darkest cell; darkest is light enough for black digits on a one-bit copier. */
export function tintOf(strength: number): string {
  return `var(--tint${Math.min(4, Math.max(0, Math.ceil(strength * 4 - 1e-9)))})`;
}

/** Settings every chart shares: no background, own type sizes, nothing cut, no row dropped for being null. */
export const CHART_CONFIG: NonNullable<TopLevelSpec['config']> = {
  aria: false,
  background: 'transparent',
  font: 'Arial',
  view: { stroke: null },
  mark: { invalid: 'show' },
  text: { fontSize: SIZE.cell, color: PAINT.ink },
  axis: {
    labelFontSize: SIZE.cell,
    titleFontSize: SIZE.cell,
    titleFontWeight: 'normal',
    labelColor: PAINT.ink,
    titleColor: PAINT.ink,
    domainColor: PAINT.rule,
    tickColor: PAINT.rule,
    gridColor: PAINT.grid,
    labelLimit: 0,
    titleLimit: 0,
    labelFlush: false,
    labelOverlap: false,
    labelBound: false,
    labelPadding: 6,
    titlePadding: 8,
  },
};
