import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import { documentText } from './page/document.ts';
import { type Html, html, trusted } from './page/html.ts';
import { type NumberedCall, numberedCalls } from './sheet/call-numbers.ts';
import { WRISTBAND_STYLE } from './sheet/sheet-style.ts';
import { SIDE_WORDS } from './words/side-words.ts';

/** Calls up to which the large type fits the card. */
const FEW = 14;
/** Copies of the card on one side of letter landscape. */
const COPIES = 6;

/** The calls numbered on a card that fits a wristband, six copies a side; the numbers are those of the call sheet. */
export async function renderWristband(plan: WeekPlan): Promise<string> {
  const calls = numberedCalls(plan);
  const card = wristCard(plan, calls);
  const cards = Array.from({ length: calls.length === 0 ? 0 : COPIES }, (_, i) =>
    i === 0 ? card : html`<div aria-hidden="true">${card}</div>`,
  );
  const none = calls.length === 0 ? html`<p>No call library (defense.yaml), so there is nothing to number.</p>` : null;
  const body = html`<main><h1 class="said">Wristband: <bdi>${plan.opponent}</bdi></h1>${none}<div class="bands">${cards}</div></main>\n`;
  return documentText({ title: `Wristband: ${plan.opponent}`, style: WRISTBAND_STYLE, script: '', body });
}

function wristCard(plan: WeekPlan, calls: readonly NumberedCall[]): Html {
  const rows = calls.map(
    ({ number, call }) =>
      html`<li><b>${number}</b> <bdi>${call.name}</bdi>${call.family === 'base' ? null : html` <span class="side">▸ ${SIDE_WORDS[call.sent_from]}</span>`}</li>`,
  );
  return html`<div class="band${calls.length > FEW ? trusted(' many') : null}"><p class="head"><bdi>${plan.opponent}</bdi>${plan.film.invented ? ' · invented data' : ''}</p><ol>${rows}</ol></div>`;
}

/** The same calls as rows: number, call, path, coverage, family, side. */
export function wristbandRows(plan: WeekPlan): readonly (readonly string[])[] {
  const rows = numberedCalls(plan).map(({ number, call }) => [
    String(number),
    call.name,
    call.path,
    call.coverage,
    call.family,
    call.sent_from,
  ]);
  return [['number', 'call', 'path', 'coverage', 'family', 'sent_from'], ...rows];
}
