import type { Review } from '../../pressure/review/review.ts';
import { type Html, html } from '../page/html.ts';
import { sureWithWord } from '../page/sure-mark.ts';
import { type CallVerdict, mondayCalls } from '../words/monday-words.ts';

/** Keep, fix, drop: the top of Monday's page; says so where our calls were not charted. */
export function mondayPart(review: Review): Html {
  if (review.grades === null)
    return html`<p class="verdict">Our calls of the game are not charted (ours.csv), so nothing is graded.</p>\n`;
  const { keep, fix, drop } = mondayCalls([review]);
  if (keep.length + fix.length + drop.length === 0)
    return html`<p class="verdict">No call came often enough to say keep, fix or drop.</p>\n`;
  return verdictColumns([review]);
}

/** Keep, fix and drop side by side, over one game or more. */
export function verdictColumns(reviews: readonly Review[]): Html {
  const { keep, fix, drop } = mondayCalls(reviews);
  return html`<div class="thirds">${column('Keep', keep)}${column('Fix', fix)}${column('Drop', drop)}</div>
<p class="small">${sureWithWord('lean')} under 20 snaps of a call. Held: loss, stop or takeaway. Fix: the idea was right, the play did not hold. Drop: called into the wrong snaps.</p>\n`;
}

function column(title: string, calls: readonly CallVerdict[]): Html {
  const items = calls.map(({ call, words }) => html`<li><b><bdi>${call}</bdi></b> ${words}</li>`);
  return html`<section><h2>${title}</h2>${calls.length === 0 ? html`<p class="none">none</p>` : html`<ul>${items}</ul>`}</section>\n`;
}
