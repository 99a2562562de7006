import type { MenuResult } from '../pressure/menu/result.ts';
import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import { documentText } from './page/document.ts';
import { type Html, html, trusted } from './page/html.ts';
import { numberedCalls } from './sheet/call-numbers.ts';
import { type LookTable, lookTable } from './sheet/look-changes.ts';
import { breakLines } from './sheet/our-tells.ts';
import { scoredCalls } from './sheet/scored-calls.ts';
import { sheetHead, sheetList } from './sheet/sheet-head.ts';
import { type SheetCall, type SheetRow, sheetRows } from './sheet/sheet-row.ts';
import { CALL_SHEET_STYLE } from './sheet/sheet-style.ts';
import { zoneRows } from './view/zone-rows.ts';
import { CAUTION_LINE } from './words/caution-words.ts';
import { ruleWords } from './words/menu-words.ts';
import { listed } from './words/number-words.ts';
import { SIDE_WORDS } from './words/side-words.ts';

/** The call sheet for the sideline as one HTML file, one side of letter landscape. */
export async function renderCallSheet(plan: WeekPlan): Promise<string> {
  const body = html`<main>${sheetHead(plan, 'Calls')}${front(plan)}<p class="small">${CAUTION_LINE}</p></main>\n`;
  return documentText({ title: `Calls: ${plan.opponent}`, style: CALL_SHEET_STYLE, script: '', body });
}

function front(plan: WeekPlan): Html {
  if (plan.library === null)
    return html`<p class="big">No call library (defense.yaml), so there are no calls to list.</p>`;
  if (plan.menu === null) return scoredCalls(plan);
  if (plan.menu.kind === 'infeasible') {
    return html`<p class="big">No menu keeps all of this week’s limits. These clash:</p>${sheetList(plan.menu.clashing.map(ruleWords))}`;
  }
  return html`${situationTable(plan, plan.menu)}${lookChanges(plan)}${breakLines(plan).map((line) => html`<p class="small">${line}</p>\n`)}`;
}

function situationTable(plan: WeekPlan, menu: Extract<MenuResult, { kind: 'menu' }>): Html {
  const { rows, clock } = sheetRows(plan, menu);
  const numbers = new Map(numberedCalls(plan).map(({ number, call }) => [call.name, number]));
  const zones = zoneRows(plan).map(
    ({ label, words, fact }) =>
      html`<tr class="zone"><th scope="row" class="where">${label}</th><td colspan="2">${words}</td><td class="fact">${fact}</td></tr>\n`,
  );
  const base = numberedCalls(plan).filter(({ call }) => call.family === 'base');
  const baseNames = base.map(({ number, call }) => `${number} ${call.name}`).join(' · ');
  return html`<p class="small">${clock ? CLOCK_WORDS : SHARE_WORDS} <b>Base: ${baseNames}</b>.</p>
<div class="scroll" tabindex="0" role="region" aria-label="Situations and calls"><table class="calls-table${linesOf(rows) > FEW_LINES ? trusted(' many') : null}"><thead><tr><th scope="col">Situation</th><th scope="col">Base</th><th scope="col">Pressures</th><th scope="col">They, on film</th></tr></thead>
<tbody>${rows.map((row) => situationRow(plan, row, numbers))}${zones}</tbody></table></div>\n`;
}

/** Lines by down and distance that one side holds in large type, two calls a line. */
const FEW_LINES = 15;

function linesOf(rows: readonly SheetRow[]): number {
  return rows.reduce((sum, { calls }) => sum + Math.max(1, Math.ceil(calls.length / 2)), 0);
}

const CLOCK_WORDS =
  'In the box: seconds on the game clock when they break the huddle. They pick the call: the mix holds and nobody can read it.';
const SHARE_WORDS = 'Share of snaps for each call.';

function situationRow(plan: WeekPlan, row: SheetRow, numbers: ReadonlyMap<string, number>): Html {
  const calls = row.calls.map((call) => callMark(plan, call, numbers));
  return html`<tr><th scope="row" class="where">${row.label}</th><td class="base">${row.base}</td><td class="calls">${calls}</td><td class="fact">${row.fact}</td></tr>\n`;
}

function callMark(plan: WeekPlan, { call, when }: SheetCall, numbers: ReadonlyMap<string, number>): Html {
  const sent = plan.library?.calls.find(({ name }) => name === call)?.sent_from;
  const side = sent === undefined ? '' : `▸ ${SIDE_WORDS[sent]}`;
  return html`<span><b>${numbers.get(call) ?? ''} <bdi>${call}</bdi></b> <span class="side">${side}</span> <span class="d">${when}</span></span> `;
}

/** The looks without a column: nothing changes for them. */
function silentWords({ notOnFilm, notCharted }: Pick<LookTable, 'notOnFilm' | 'notCharted'>): string {
  const parts = [
    notOnFilm.length === 0 ? '' : `Not on film: ${listed(notOnFilm)}.`,
    notCharted.length === 0 ? '' : `Not charted: ${listed(notCharted)}.`,
  ].filter((part) => part !== '');
  return parts.length === 0 ? '' : `${parts.join(' ')} Every call stays.`;
}

function lookChanges(plan: WeekPlan): Html {
  const { columns, rows, ...silent } = lookTable(plan);
  const heads = columns.map(
    ({ label, count }) => html`<th scope="col">${label}<span class="count">${count}</span></th>`,
  );
  const points = new Map(numberedCalls(plan).map(({ call }) => [call.name, call.rules[0] ?? '']));
  const lines = rows.map(
    ({ call, cells }) =>
      html`<tr><th scope="row"><bdi>${call}</bdi></th>${cells.map((cell) => html`<td>${cell}</td>`)}<td class="point">${points.get(call) ?? ''}</td></tr>\n`,
  );
  return html`<div class="scroll" tabindex="0" role="region" aria-label="What changes against each look"><table class="looks"><thead><tr><th scope="col">${columns.length === 0 ? 'Call' : 'When they show'}</th>${heads}<th scope="col">Point</th></tr></thead><tbody>${lines}</tbody></table></div>
<p class="small">“base”: check to a base call. “→”: same path, that call. “?”: a lean, under 20 snaps. ▸ to the back: where the back lines up. ${silentWords(silent)}</p>\n`;
}
