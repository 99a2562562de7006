import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import { documentText } from './page/document.ts';
import { type Html, html } from './page/html.ts';
import { callLines, expectLines, protectLines, watchLines } from './sheet/player-lines.ts';
import { sheetHead, sheetList } from './sheet/sheet-head.ts';
import { SHEET_STYLE } from './sheet/sheet-style.ts';

/** The tip sheet for players as one HTML file: one page, words before numbers. */
export async function renderTipSheet(plan: WeekPlan): Promise<string> {
  const body = html`<main>${sheetHead(plan, 'Know this about')}
<div class="thirds"><section><h2>What comes when</h2>${expectTable(plan)}</section>
<section><h2>When you see it, say it</h2>${sheetList(watchLines(plan))}<h2>How they protect</h2>${sheetList(protectLines(plan))}</section>
<section><h2>Do it right</h2>${sheetList(SAFE_PLAY)}</section></div>
<section class="ours"><h2>Our calls this week</h2>${callTable(plan)}</section></main>\n`;
  return documentText({ title: `Know this about ${plan.opponent}`, style: SHEET_STYLE, script: '', body });
}

/** Common practice of blitz teaching, no source; the last line defers to those who decide. */
const SAFE_PLAY = [
  'Free at the passer: gather, head up, see what you hit. Late is a flag and a hurt player.',
  'Stay in your lane. Two in one gap is one too many.',
  'Peel man: see the back before you go.',
  'Hold the look until the ball moves.',
  'Head hurts or you feel off: tell the athletic trainer at once.',
];

function expectTable(plan: WeekPlan): Html {
  const rows = expectLines(plan).map(
    (line) => html`<tr><th scope="row">${line.where}</th><td>${line.what}</td></tr>\n`,
  );
  return html`<table><tbody>${rows}</tbody></table>`;
}

function callTable(plan: WeekPlan): Html {
  const rows = callLines(plan).map(
    ({ call, words }) => html`<tr><th scope="row"><bdi>${call.name}</bdi></th><td>${words}</td></tr>\n`,
  );
  if (rows.length === 0) return html`<p>No call library was given.</p>`;
  return html`<table><tbody>${rows}</tbody></table>`;
}
