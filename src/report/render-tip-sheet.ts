import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import { documentText } from './page/document.ts';
import { type Html, html } from './page/html.ts';
import { sureMark, sureWithWord } from './page/sure-mark.ts';
import { frontLines } from './sheet/front-lines.ts';
import { callLines, expectLines, protectLines, watchLines } from './sheet/player-lines.ts';
import { rawKeys } from './sheet/raw-keys.ts';
import { sheetHead, sheetList } from './sheet/sheet-head.ts';
import { TIP_SHEET_STYLE } from './sheet/sheet-style.ts';
import { CAUTION_LINE } from './words/caution-words.ts';
import { counted } from './words/number-words.ts';

/** The tip sheet for players as one HTML file, one side: raw keys first, then protection, then tendencies. */
export async function renderTipSheet(plan: WeekPlan): Promise<string> {
  const tendencies = watchLines(plan);
  const body = html`<main>${sheetHead(plan, 'Tip sheet')}
<div class="halves"><section><h2>Front: keys before the snap</h2>${keyTable(plan)}<h2>Front: how they protect</h2>${sheetList(protectLines(plan))}</section>
<section><h2>Second level, back end: by down</h2>${expectTable(plan)}${frontPart(plan)}</section></div>
${tendencies.length === 0 ? null : html`<section><h2>Tendencies to break</h2>${sheetList(tendencies)}</section>`}
<section class="ours"><h2>Our calls</h2><p class="small">${NEAR_FAR}</p>${callTable(plan)}</section>
<section><h2>Play it right</h2>${sheetList(PLAY_IT_RIGHT)}<p class="small">${CAUTION_LINE}</p></section></main>\n`;
  return documentText({ title: `Tip sheet: ${plan.opponent}`, style: TIP_SHEET_STYLE, script: '', body });
}

const NEAR_FAR = 'near: the side we send it to. far: the other side.';

/** Common practice of teaching pressure, no source. */
const PLAY_IT_RIGHT = [
  'Free at the passer: gather, head up, see what you hit. Late is a flag and a hurt player.',
  'Stay in your lane. Two in one gap is one too many.',
  'Peel man: see the back before you go.',
  'Hold the look until the ball moves.',
  'Head hurts or you feel off: tell the athletic trainer at once.',
];

function keyTable(plan: WeekPlan): Html {
  const keys = rawKeys(plan);
  if (keys.length === 0) return html`<p>How they line up is not charted.</p>`;
  const rows = keys.map(
    ({ see, means, others, sure }) =>
      html`<tr><th scope="row">${see}</th><td>${means}</td><td class="side">${others}</td><td>${sure === 'no difference' ? sureMark(sure) : sureWithWord(sure)}</td></tr>\n`,
  );
  return html`<table class="keys"><tbody>${rows}</tbody></table>`;
}

/** One line a man of the front; nothing where protection is not charted. */
function frontPart(plan: WeekPlan): Html | null {
  const lines = frontLines(plan);
  if (lines.length === 0) return null;
  const rows = lines.map(({ man, words }) => html`<tr><th scope="row">${man}</th><td>${words}</td></tr>\n`);
  return html`<h2>Front: what you meet rushing a pass</h2><table><tbody>${rows}</tbody></table><p class="small">Expected over our calls, by how they protect on film (blockers charted on ${counted(plan.protection.mix.charted.protectors, 'pass', 'passes')}).</p>`;
}

function expectTable(plan: WeekPlan): Html {
  const lines = expectLines(plan);
  if (lines.length === 0) return html`<p>What they do by down and distance is not charted.</p>`;
  const rows = lines.map((line) => html`<tr><th scope="row">${line.where}</th><td>${line.what}</td></tr>\n`);
  return html`<table><tbody>${rows}</tbody></table>`;
}

function callTable(plan: WeekPlan): Html {
  const rows = callLines(plan).map(
    ({ call, words }) => html`<tr><th scope="row"><bdi>${call.name}</bdi></th><td>${words}</td></tr>\n`,
  );
  if (rows.length === 0) return html`<p>No call library (defense.yaml).</p>`;
  return html`<table><tbody>${rows}</tbody></table>`;
}
