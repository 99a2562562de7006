import type { Share } from '../../stats/share.ts';
import { isThin, shareWithInterval } from '../words/share-words.ts';

/** One cell: what is written, and the number it sorts by where it has one. */
export interface Cell {
  readonly text: string;
  readonly value?: number;
}

/** One row; its first cell is the row's name. A row of one situation can be filtered by it. */
export interface Row {
  readonly name: string;
  readonly cells: readonly Cell[];
  readonly situation?: string;
  readonly thin?: true;
  /** Name of a table view hook of the page script, for rows it re-ranks. */
  readonly key?: string;
}

/** A column: its heading, and how it is set. */
export interface Column {
  readonly label: string;
  readonly kind: 'text' | 'number';
}

/** A table as plain data; `columns[0]` heads the row names. */
export interface TableView {
  readonly id: string;
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** Said in place of a table without rows. */
  readonly empty: string;
  /** On a phone each row becomes a card with its headings beside the words, where columns would be too narrow. */
  readonly phone?: 'cards';
}

/** The table without columns that hold nothing in any row. */
export function withoutEmptyColumns(table: TableView): TableView {
  const held = table.columns.map(
    (_, i) => i === 0 || table.rows.some(({ cells }) => (cells[i - 1]?.text ?? '') !== ''),
  );
  if (held.every(Boolean)) return table;
  return {
    ...table,
    columns: table.columns.filter((_, i) => held[i]),
    rows: table.rows.map((row) => ({ ...row, cells: row.cells.filter((_, i) => held[i + 1]) })),
  };
}

/** A heading over words. */
export function words(label: string): Column {
  return { label, kind: 'text' };
}

/** A heading over numbers. */
export function numbers(label: string): Column {
  return { label, kind: 'number' };
}

/** A cell of words. */
export function textCell(text: string): Cell {
  return { text };
}

/** A cell that sorts by its number. */
export function numberCell(text: string, value: number): Cell {
  return { text, value };
}

/** A share with its count; thin ones say so, none sorts below every share. */
export function shareCell(value: Share): Cell {
  const thin = isThin(value) ? ', thin' : '';
  return { text: `${shareWithInterval(value)}${thin}`, value: value.estimate ?? -1 };
}

/** The mark of thinness for a row, to be spread into it. */
export function thinMark(thin: boolean): { readonly thin?: true } {
  return thin ? { thin: true } : {};
}
