import type { TopLevelSpec } from 'vega-lite';

/** Sizes of a plot, in pixels: it fits a phone as it is, and text is never under 13. */
export const SIZE = { cell: 13, plot: 270, height: 190 } as const;

/** Ink of the charts: CSS variables, so that one drawing serves both themes and the printer. */
export const PAINT = {
  ink: 'var(--ink)',
  paper: 'var(--paper)',
  rule: 'var(--rule)',
  grid: 'var(--grid)',
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
