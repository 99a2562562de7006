import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Html, html } from '../page/html.ts';
import type { Chapter } from '../view/block.ts';
import { pageDay } from '../words/game-day.ts';
import { counted } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';

/** The head of the page: whom it is about, when we play them, from how much film, and that invented data are invented. */
export function masthead(plan: WeekPlan): Html {
  const film = `${counted(plan.film.snaps, 'snap', 'snaps')}, ${counted(plan.film.games.length, 'game', 'games')}${ownFilmWords(plan)}`;
  return html`<a class="skip" href="#plan">Skip to the plan</a>
<header class="top">
<h1>Pressure plan: <bdi>${plan.opponent}</bdi></h1>
<p class="meta"><bdi>${plan.us}</bdi> · ${pageDay(plan)} · ${film}${plan.film.invented ? html` · ${INVENTED}` : null}</p>
</header>\n`;
}

/** How much their own film counts in the forecast beside the other offenses; nothing without other offenses. */
function ownFilmWords({ forecast }: WeekPlan): string {
  const overall = forecast.forecasts.find(({ target, situation }) => target === 'answer' && situation === 'all');
  const share = overall?.ownShare;
  return !forecast.archive.used || share === undefined ? '' : ` · their film counts ${percent(share)}`;
}

/** Says that the data are invented; printed wherever numbers from them are. */
export const INVENTED: Html = html`<span class="invented">Invented demonstration data: nothing here is real</span>`;

/** The contents bar; the page script adds its buttons to it. */
export function contentsBar(chapters: readonly Chapter[]): Html {
  const links = chapters.map((chapter) => html`<li><a href="#${chapter.id}">${chapter.short}</a></li>`);
  return html`<div class="bar"><nav aria-label="Contents"><ul>${links}</ul></nav><div class="tools" id="tools" hidden></div></div>\n`;
}
