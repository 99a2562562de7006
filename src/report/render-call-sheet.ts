import type { WeekPlan } from '../pressure/week-plan.ts';
import { CAUTIONS } from './chapter/cautions.ts';
import { documentText } from './page/document.ts';
import { html } from './page/html.ts';
import { INVENTED } from './page/masthead.ts';
import { REPORT_STYLE } from './page/report-style.ts';

/** The call sheet as one HTML file. */
export async function renderCallSheet(plan: WeekPlan): Promise<string> {
  const body = html`<main><h1>${plan.opponent}</h1>${plan.film.invented ? INVENTED : null}<p>${CAUTIONS[0] ?? ''}</p></main>`;
  return documentText({ title: `${plan.opponent}: call sheet`, style: REPORT_STYLE, script: '', body });
}
