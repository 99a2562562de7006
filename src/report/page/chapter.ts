import type { Block, Chapter, ChartView } from '../view/block.ts';
import { type Html, html, trusted } from './html.ts';
import { tableMarkup } from './table.ts';

/** Draws a chart as SVG markup; handed in so that the page knows no chart library. */
export type DrawChart = (chart: ChartView) => Promise<string>;

/** A chapter as a section; charts are drawn one after the other so that the bytes never depend on timing. */
export async function chapterMarkup(chapter: Chapter, draw: DrawChart): Promise<Html> {
  const parts: Html[] = [];
  for (const block of chapter.blocks) parts.push(await blockMarkup(block, draw));
  return html`<section id="${chapter.id}" aria-labelledby="${chapter.id}-title">
<h2 id="${chapter.id}-title"><a href="#${chapter.id}">${chapter.title}</a></h2>
${parts}</section>\n`;
}

async function blockMarkup(block: Block, draw: DrawChart): Promise<Html> {
  switch (block.kind) {
    case 'prose':
      return block.html;
    case 'heading':
      return html`<h3 id="${block.id}">${block.text}</h3>\n`;
    case 'table':
      return tableMarkup(block.table);
    case 'folded':
      return foldedMarkup(block.summary, tableMarkup(block.table));
    case 'chart':
      return figureMarkup(block.chart, await draw(block.chart));
    default:
      return block satisfies never;
  }
}

function figureMarkup(chart: ChartView, svg: string): Html {
  const drawing =
    chart.spec === null
      ? html`<p class="none">${chart.empty}</p>`
      : html`<div class="scroll drawing" tabindex="0" role="region" aria-label="Chart: ${chart.title}">${trusted(svg)}</div>
<figcaption>${chart.caption}</figcaption>`;
  return html`<figure id="${chart.id}"><h3 class="finding">${chart.title}</h3>
${drawing}
${foldedMarkup('The numbers as a table', tableMarkup(chart.table))}</figure>\n`;
}

function foldedMarkup(summary: string, body: Html): Html {
  return html`<details><summary>${summary}</summary>${body}</details>\n`;
}
