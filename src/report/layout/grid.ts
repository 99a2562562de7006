import type { Grid, GridCell, GridRow } from '../chart/matrix-grid.ts';
import { type Html, html, trusted } from '../page/html.ts';

/** A matrix with the number in every cell; the tint only repeats it, and a cell without snaps is hatched. */
export function gridMarkup(grid: Grid, caption: string): Html {
  const heads = grid.columns.map((column) => html`<th scope="col">${column}</th>`);
  return html`<div class="scroll" tabindex="0" role="region" aria-label="${caption}"><table class="grid"><caption class="said">${caption}</caption>
<thead><tr><td></td><th scope="col">${grid.noteTitle}</th>${heads}</tr></thead>
<tbody>${grid.rows.map(gridRow)}</tbody></table></div>\n`;
}

function gridRow({ label, note, cells }: GridRow): Html {
  return html`<tr><th scope="row">${label}</th><td class="note">${note}</td>${cells.map(gridCell)}</tr>\n`;
}

function gridCell({ text, strength, state }: GridCell): Html {
  return html`<td class="${state === 'none' ? 'hatch' : tintClass(strength)}">${text}</td>`;
}

/**
 * The class of a tint, in five steps.
 *
 * @param strength - share of the darkest cell; below 0 and above 1 stand at the ends
 */
export function tintClass(strength: number): Html {
  return trusted(`t${Math.min(4, Math.max(0, Math.ceil(strength * 4 - 1e-9)))}`);
}
