import type { TopLevelSpec } from 'vega-lite';
import type { Html } from '../page/html.ts';
import type { TableView } from './table-view.ts';

/** A chart with the table of its numbers; a chart without data carries no spec and says so. */
export interface ChartView {
  readonly id: string;
  /** The finding, as a sentence. */
  readonly title: string;
  /** How to read the marks. */
  readonly caption: string;
  readonly spec: TopLevelSpec | null;
  /** Said in place of the drawing. */
  readonly empty: string;
  /** A matrix needs a light rim round its numbers. */
  readonly tinted: 'tinted' | 'plain';
  readonly table: TableView;
}

/** A piece of a chapter. */
export type Block =
  | { readonly kind: 'prose'; readonly html: Html }
  | { readonly kind: 'heading'; readonly id: string; readonly text: string }
  | { readonly kind: 'table'; readonly table: TableView }
  | { readonly kind: 'folded'; readonly summary: string; readonly table: TableView }
  | { readonly kind: 'chart'; readonly chart: ChartView };

/** A chapter of the page; `short` is its word in the contents bar. */
export interface Chapter {
  readonly id: string;
  readonly title: string;
  readonly short: string;
  readonly blocks: readonly Block[];
}
