import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { Chapter } from '../view/block.ts';
import { counted } from '../words/number-words.ts';
import { type Html, html } from './html.ts';

/** The head of the page: whom it is about, from how much film, and that invented data are invented. */
export function masthead(plan: WeekPlan): Html {
  const film = `${counted(plan.film.snaps, 'snap', 'snaps')} in ${counted(plan.film.games.length, 'game', 'games')}`;
  return html`<a class="skip" href="#short-version">Skip to the short version</a>
<header class="top">
<h1>Pressure plan for <bdi>${plan.opponent}</bdi></h1>
<p class="meta"><bdi>${plan.us}</bdi> · ${plan.date} · ${film} · seed ${plan.seed} · version ${plan.version}</p>
${plan.film.invented ? INVENTED : null}
</header>\n`;
}

/** Says that the data are invented; printed wherever numbers from them are. */
export const INVENTED: Html = html`<p class="invented">Invented demonstration data: no team, game or snap on this page is real.</p>`;

/** The contents bar. */
export function contentsBar(chapters: readonly Chapter[]): Html {
  const links = chapters.map((chapter) => html`<li><a href="#${chapter.id}">${chapter.short}</a></li>`);
  return html`<div class="bar"><nav aria-label="Contents"><ul>${links}</ul></nav><div class="tools" id="tools" role="search" aria-label="Filter the tables" hidden></div></div>\n`;
}
