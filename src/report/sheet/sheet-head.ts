import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Html, html } from '../page/html.ts';
import { pageDay } from '../words/game-day.ts';

/** The head line of a sheet: what it is, whom it is for, the day of the game, and that invented data are invented. */
export function sheetHead(plan: WeekPlan, what: string): Html {
  const invented = plan.film.invented ? html`<span class="invented">Invented data</span>` : null;
  return html`<div class="head"><h1>${what}: <bdi>${plan.opponent}</bdi></h1><span><bdi>${plan.us}</bdi> · ${pageDay(plan)}</span>${invented}</div>\n`;
}

/** Lines as a list. */
export function sheetList(lines: readonly string[]): Html {
  return lines.length === 0 ? html`` : html`<ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>\n`;
}
