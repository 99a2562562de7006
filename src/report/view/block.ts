import type { TopLevelSpec } from 'vega-lite';
import type { IntervalAxis, IntervalRow } from '../chart/interval-row.ts';
import type { Grid } from '../chart/matrix-grid.ts';
import type { Html } from '../page/html.ts';
import type { TableView } from './table-view.ts';

/** What a chart draws: intervals row by row, a matrix of numbers, or curves for the chart library. */
export type Drawing =
  | { readonly kind: 'strips'; readonly rows: readonly IntervalRow[]; readonly axis: IntervalAxis }
  | { readonly kind: 'grid'; readonly grid: Grid }
  | { readonly kind: 'plot'; readonly spec: TopLevelSpec };

/** A chart with the table of its numbers; a chart without data draws nothing and says so. */
export interface ChartView {
  readonly id: string;
  /** The finding, as a sentence. */
  readonly title: string;
  /** How to read the marks. */
  readonly caption: string;
  readonly drawing: Drawing | null;
  /** Said in place of the drawing. */
  readonly empty: string;
  readonly table: TableView;
}

/** A piece of a chapter; a folded one is closed until it is asked for, on screen and on paper. */
export type Block =
  | { readonly kind: 'prose'; readonly html: Html }
  | { readonly kind: 'heading'; readonly id: string; readonly text: string }
  | { readonly kind: 'table'; readonly table: TableView }
  | { readonly kind: 'folded'; readonly summary: string; readonly blocks: readonly Block[] }
  | { readonly kind: 'chart'; readonly chart: ChartView };

/** A chapter of the page; `short` is its word in the contents bar. */
export interface Chapter {
  readonly id: string;
  readonly title: string;
  readonly short: string;
  readonly blocks: readonly Block[];
}

/** Tables folded away under one line. */
export function foldedTables(summary: string, ...tables: readonly TableView[]): Block {
  return { kind: 'folded', summary, blocks: tables.map((table) => ({ kind: 'table', table })) };
}

/** Every table of the blocks, with those of the charts and of the folded parts. */
export function tablesOf(blocks: readonly Block[]): readonly TableView[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'table') return [block.table];
    if (block.kind === 'chart') return [block.chart.table];
    return block.kind === 'folded' ? tablesOf(block.blocks) : [];
  });
}
