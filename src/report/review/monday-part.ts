import type { Review } from '../../pressure/review/review.ts';
import { type Html, html } from '../page/html.ts';
import { sureWithWord } from '../page/sure-mark.ts';
import { type CallVerdict, mondayCalls } from '../words/monday-words.ts';

/** Keep, fix, drop: the top of Monday's page; says so where our calls were not charted. */
export function mondayPart(review: Review): Html {
  if (review.grades === null)
    return html`<p class="verdict">Our calls of the game are not charted (ours.csv), so nothing is graded.</p>\n`;
  if (Object.values(mondayCalls([review])).every((calls) => calls.length === 0))
    return html`<p class="verdict">No call came often enough to say keep, fix or drop.</p>\n`;
  return verdictColumns([review]);
}

/** Keep, fix and drop side by side, over one game or more, and what came out between them. */
export function verdictColumns(reviews: readonly Review[]): Html {
  const { keep, fix, drop, between } = mondayCalls(reviews);
  return html`<div class="thirds">${column('Keep', keep)}${column('Fix', fix)}${column('Drop', drop)}</div>
${betweenLine(between)}<p class="small">${sureWithWord('lean')} under 20 snaps of a call. Held: loss, stop or takeaway. Fix: the idea was right, the play did not hold. Drop: called into the wrong snaps.</p>\n`;
}

function betweenLine(calls: readonly CallVerdict[]): Html | null {
  if (calls.length === 0) return null;
  const said = calls.map(({ call, words }, i) => html`${i === 0 ? null : html`; `}<b><bdi>${call}</bdi></b> ${words}`);
  return html`<p>In between, carry on: ${said}.</p>\n`;
}

function column(title: string, calls: readonly CallVerdict[]): Html {
  const items = calls.map(({ call, words }) => html`<li><b><bdi>${call}</bdi></b> ${words}</li>`);
  return html`<section><h2>${title}</h2>${calls.length === 0 ? html`<p class="none">none</p>` : html`<ul>${items}</ul>`}</section>\n`;
}
