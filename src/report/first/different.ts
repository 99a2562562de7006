import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Html, html } from '../page/html.ts';
import { tellFollows } from '../view/tells-chart.ts';
import { counted } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { shareWords } from '../words/share-words.ts';

/** Lines of the part at most. */
const MOST = 8;

/** What makes them different from other offenses, each line with its count and how sure. */
export function differentPart(plan: WeekPlan): Html {
  const { tells, looked } = plan.forecast.tells;
  const lines = tells
    .slice(0, MOST)
    .map(
      (tell) =>
        html`<li>${tell.description}: ${tellFollows(tell).toLowerCase()} on ${shareWords(tell.film)}; plan on ${percent(tell.planWith)}</li>`,
    );
  const none = html`<p>${looked === 0 ? 'Too little is charted to look for tendencies.' : `No tendency beyond down, distance and look (${counted(looked, 'pattern', 'patterns')} checked).`}</p>`;
  return html`<h2>What makes them different</h2>
${lines.length === 0 ? none : html`<ul class="different">${lines}</ul>`}\n`;
}
