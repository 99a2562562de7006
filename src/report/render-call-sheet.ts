import type { MenuResult } from '../pressure/menu/result.ts';
import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import { documentText } from './page/document.ts';
import { type Html, html, trusted } from './page/html.ts';
import type { DigitCall } from './sheet/clock-digits.ts';
import { alertLines, leaveRows } from './sheet/leave-it.ts';
import { pressureReminders, tellsToBreak } from './sheet/our-tells.ts';
import { scoredCalls } from './sheet/scored-calls.ts';
import { SHEET_CAUTION, sheetHead, sheetList } from './sheet/sheet-head.ts';
import { SHEET_STYLE } from './sheet/sheet-style.ts';
import { type SituationLine, situationLines } from './sheet/situation-line.ts';

/**
 * The call sheet for the sideline as one HTML file: the situations with their calls on the front, when to leave a call
 * and what of ours to break on the back.
 */
export async function renderCallSheet(plan: WeekPlan): Promise<string> {
  const body = html`<main>${sheetHead(plan, 'Calls against')}${front(plan)}${back(plan)}</main>\n`;
  return documentText({ title: `Calls against ${plan.opponent}`, style: SHEET_STYLE, script: '', body });
}

function front(plan: WeekPlan): Html {
  if (plan.library === null) return html`<p class="big">No call library was given, so there are no calls to list.</p>`;
  if (plan.menu === null) return scoredCalls(plan);
  if (plan.menu.kind === 'infeasible') {
    return html`<p class="big">No menu keeps all the limits of this week. These clash:</p>${sheetList(plan.menu.clashing)}`;
  }
  return situationTable(plan, plan.menu);
}

function situationTable(plan: WeekPlan, menu: Extract<MenuResult, { kind: 'menu' }>): Html {
  const lines = situationLines(plan, menu);
  const rows = lines.map((line, i) => situationRow(line, startsDown(line, lines[i - 1])));
  return html`<p class="small">Calls in order. In the box: call it when the clock’s last digit is one of these. That keeps the mix, and nobody can read it.</p>
<div class="scroll" tabindex="0" role="region" aria-label="Situations and calls"><table><thead><tr><th scope="col">Situation</th><th scope="col">Calls</th><th scope="col">Because</th></tr></thead>
<tbody>${rows}</tbody></table></div>\n`;
}

function startsDown(line: SituationLine, before: SituationLine | undefined): 'new' | 'same' {
  return before !== undefined && before.label.slice(0, 3) !== line.label.slice(0, 3) ? 'new' : 'same';
}

function situationRow(line: SituationLine, down: 'new' | 'same'): Html {
  const calls = line.calls.map(callMark);
  const mark = down === 'new' ? trusted(' class="new"') : null;
  return html`<tr${mark}><th scope="row" class="where">${line.label}</th><td class="calls">${calls}</td><td class="fact">${line.fact}</td></tr>\n`;
}

function callMark(call: DigitCall): Html {
  return html`<span><bdi>${call.call}</bdi><span class="d">${call.digits}</span></span> `;
}

function back(plan: WeekPlan): Html {
  return html`<div class="page"><h2>What the calls do against it, and when to leave them</h2>${leaveTable(plan)}${sheetList(alertLines(plan))}
<div class="halves"><section><h2>Ours to break</h2>${sheetList(tellsToBreak(plan))}</section>
<section><h2>How often we send it</h2>${sheetList(pressureReminders(plan))}</section></div>
<p class="small">${SHEET_CAUTION}</p></div>\n`;
}

function leaveTable(plan: WeekPlan): Html {
  const rows = leaveRows(plan);
  if (rows.length === 0) return html`<p>No call library was given.</p>`;
  const body = rows.map(
    (row) =>
      html`<tr><th scope="row"><bdi>${row.calls}</bdi></th><td>${row.trips}</td><td>${row.empty}</td><td>${row.motion}</td></tr>\n`,
  );
  return html`<div class="scroll" tabindex="0" role="region" aria-label="When to leave a call"><table class="leave"><thead><tr><th scope="col">Call</th><th scope="col">Trips</th><th scope="col">Empty</th><th scope="col">Fast motion</th></tr></thead><tbody>${body}</tbody></table></div>`;
}
