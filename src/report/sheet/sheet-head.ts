import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Html, html } from '../page/html.ts';

/** The head line of a sheet: what it is, whom it is for, and that invented data are invented. */
export function sheetHead(plan: WeekPlan, what: string): Html {
  const invented = plan.film.invented ? html`<span class="invented">Invented data</span>` : null;
  return html`<div class="head"><h1>${what}: <bdi>${plan.opponent}</bdi></h1><span><bdi>${plan.us}</bdi> · ${plan.date} · seed ${plan.seed}</span>${invented}</div>\n`;
}

/** Lines as a list. */
export function sheetList(lines: readonly string[]): Html {
  return html`<ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>\n`;
}

/** The cautions in the short form a sheet has room for. */
export const SHEET_CAUTION =
  'Guidance from few snaps. Rules and contact limits belong to the state association and licensed athletic trainers. What was not practised is not called.';
