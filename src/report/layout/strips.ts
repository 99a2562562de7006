import type { IntervalAxis, IntervalRow } from '../chart/interval-row.ts';
import { stripDrawing } from '../chart/strip.ts';
import { type Html, html, trusted } from '../page/html.ts';
import { signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';

/** Rows of an interval chart: name, strip and count side by side, on a phone the strip under its words. */
export function stripsMarkup(rows: readonly IntervalRow[], axis: IntervalAxis): Html {
  return html`<div class="strips">${rows.map((row) => stripRow(row, axis))}${scaleRow(axis)}</div>\n`;
}

function stripRow(row: IntervalRow, axis: IntervalAxis): Html {
  return html`<div class="strip"><span class="name">${row.label}</span>${trusted(stripDrawing(row, axis))}<span class="note">${row.note}</span></div>\n`;
}

function scaleRow({ domain, format, title, reference }: IntervalAxis): Html {
  const written = format === 'percent' ? percent : signed;
  const rule = reference === null ? '' : `; dashed line: ${reference.label}`;
  return html`<div class="strip scale-row"><span class="name"></span><span class="ends"><span>${written(domain[0])}</span><span>${written(domain[1])}</span></span><span class="note">${title}${rule}</span></div>\n`;
}
