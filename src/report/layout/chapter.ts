import { type Html, html, trusted } from '../page/html.ts';
import type { Block, Chapter, ChartView, Drawing } from '../view/block.ts';
import { gridMarkup } from './grid.ts';
import { stripsMarkup } from './strips.ts';
import { tableMarkup } from './table.ts';

/** How chapters are written out. */
export interface ChapterMode {
  /** Draws curves as SVG markup; handed in so that the page knows no chart library. */
  readonly draw: (chart: ChartView) => Promise<string>;
  /** Whether folded parts start open, as for printing everything. */
  readonly folds: 'closed' | 'open';
}

/** A chapter as a section; charts are drawn one after the other so that the bytes never depend on timing. */
export async function chapterMarkup(chapter: Chapter, mode: ChapterMode): Promise<Html> {
  return html`<section id="${chapter.id}" aria-labelledby="${chapter.id}-title">
<h2 id="${chapter.id}-title"><a href="#${chapter.id}">${chapter.title}</a></h2>
${await blocksMarkup(chapter.blocks, mode)}</section>\n`;
}

/** Blocks one after the other. */
export async function blocksMarkup(blocks: readonly Block[], mode: ChapterMode): Promise<Html> {
  const parts: Html[] = [];
  for (const block of blocks) parts.push(await blockMarkup(block, mode));
  return html`${parts}`;
}

async function blockMarkup(block: Block, mode: ChapterMode): Promise<Html> {
  switch (block.kind) {
    case 'prose':
      return block.html;
    case 'heading':
      return html`<h3 id="${block.id}">${block.text}</h3>\n`;
    case 'table':
      return tableMarkup(block.table);
    case 'folded':
      return foldedMarkup(block.summary, await blocksMarkup(block.blocks, mode), mode);
    case 'chart':
      return figureMarkup(block.chart, mode);
    default:
      return block satisfies never;
  }
}

async function figureMarkup(chart: ChartView, mode: ChapterMode): Promise<Html> {
  const drawing =
    chart.drawing === null
      ? html`<p class="none">${chart.empty}</p>`
      : html`${await drawingMarkup(chart, chart.drawing, mode)}<figcaption>${chart.caption}</figcaption>`;
  return html`<figure id="${chart.id}"><h3 class="finding">${chart.title}</h3>
${drawing}
${foldedMarkup('Table', tableMarkup(chart.table), mode)}</figure>\n`;
}

async function drawingMarkup(chart: ChartView, drawing: Drawing, mode: ChapterMode): Promise<Html> {
  switch (drawing.kind) {
    case 'strips':
      return stripsMarkup(drawing.rows, drawing.axis);
    case 'grid':
      return gridMarkup(drawing.grid, chart.title);
    case 'plot':
      return html`<div class="drawing">${trusted(await mode.draw(chart))}</div>`;
    default:
      return drawing satisfies never;
  }
}

function foldedMarkup(summary: string, body: Html, { folds }: ChapterMode): Html {
  return html`<details${folds === 'open' ? trusted(' open') : null}><summary>${summary}</summary>${body}</details>\n`;
}
