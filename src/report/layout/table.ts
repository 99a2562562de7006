import { type Html, html, trusted } from '../page/html.ts';
import type { Cell, Column, Row, TableView } from '../view/table-view.ts';

/** A table with a caption, headings that can repeat on paper, and row names; without rows, the sentence that says so. */
export function tableMarkup(table: TableView): Html {
  if (table.rows.length === 0) return html`<p class="none">${table.caption}: ${table.empty}</p>`;
  return html`<div class="scroll" tabindex="0" role="region" aria-label="${table.caption}"><table id="${table.id}"${table.phone === 'cards' ? trusted(' class="cards-on-phone"') : null}>
<caption>${table.caption}</caption>
<thead><tr>${table.columns.map(headingMarkup)}</tr></thead>
<tbody>${table.rows.map((row) => rowMarkup(row, table))}</tbody></table></div>`;
}

function headingMarkup(column: Column): Html {
  return html`<th scope="col"${classOf(column)}>${column.label}</th>`;
}

function rowMarkup(row: Row, { columns, phone }: TableView): Html {
  const marks = [
    row.situation === undefined ? null : html` data-situation="${row.situation}"`,
    row.thin ? trusted(' data-thin') : null,
    row.key === undefined ? null : html` data-key="${row.key}"`,
  ];
  const cells = row.cells.map((cell, i) => cellMarkup(cell, columns[i + 1], phone));
  return html`<tr${marks}><th scope="row"><bdi>${row.name}</bdi></th>${cells}</tr>\n`;
}

function cellMarkup(cell: Cell, column: Column | undefined, phone: TableView['phone']): Html {
  const value = cell.value === undefined ? null : html` data-v="${sortKey(cell.value)}"`;
  const label = phone === 'cards' ? html` data-label="${column?.label ?? ''}"` : null;
  return html`<td${classOf(column)}${value}${label}>${cell.text}</td>`;
}

function classOf(column: Column | undefined): Html | null {
  return column?.kind === 'number' ? trusted(' class="n"') : null;
}

function sortKey(value: number): string {
  return Number.isFinite(value) ? String(Math.round(value * 1e4) / 1e4) : '';
}
