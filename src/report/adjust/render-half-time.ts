import type { Adjustment } from '../../pressure/halftime/adjust.ts';
import type { MovedHabit } from '../../pressure/halftime/moved.ts';
import { documentText } from '../page/document.ts';
import { type Html, html } from '../page/html.ts';
import { tableMarkup } from '../page/table.ts';
import { counted } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { HALF_TIME_STYLE } from './half-time-style.ts';
import { answersTable, callsTable, familiesTable, situationsTable } from './half-time-table.ts';
import { habitWords, pressureWords, warningWords } from './half-time-words.ts';

/** Habits one screen has room for, of each kind. */
const HABITS_SHOWN = 4;
/** Warnings one screen has room for. */
const WARNINGS_SHOWN = 2;
/** Kinds of pressure shown beside the calls. */
const FAMILIES_SHOWN = 6;

/**
 * The half-time update as one HTML file that fits one screen of a tablet; what has no room is in the JSON.
 *
 * @param faults - live rows that could not be used
 */
export async function renderHalfTime(update: Adjustment, faults: number): Promise<string> {
  const body = html`<main>
<div class="head"><h1>Half-time: <bdi>${update.opponent}</bdi></h1><span>${counted(update.liveSnaps, 'snap', 'snaps')} tonight, each worth ${percent(update.discount)} of one on film</span>${update.invented ? html`<span class="invented">Invented data</span>` : null}</div>
<div class="columns">
<section><h2>What truly moved</h2>
${habits(update.moved.moved, `Nothing, of ${update.moved.looked} habits looked at.`)}<h2>Only looks so</h2>
${habits(update.moved.looksSo, 'Nothing else stands out.')}<h2>What they do with the ball</h2>
${tableMarkup(answersTable(update))}</section>
<section><h2>Calls for the second half</h2>
${tableMarkup(callsTable(update))}<p class="small">Points saved per ten snaps against the base. Arrow: rank on Sunday. Used: of the calls planned for the game. Held: loss, stop or takeaway.</p>${families(update)}</section>
<section><h2>By situation</h2>
${tableMarkup(situationsTable(update))}<h2>What they have seen of us</h2>
<p>${pressureWords(update)}</p>${warnings(update)}</section>
</div>
<p class="small foot">${footWords(update, faults)}</p>
</main>`;
  return documentText({ title: `Half-time: ${update.opponent}`, style: HALF_TIME_STYLE, script: '', body });
}

function habits(list: readonly MovedHabit[], none: string): Html {
  if (list.length === 0) return html`<p class="none">${none}</p>`;
  const rest = list.length - HABITS_SHOWN;
  const more = rest > 0 ? html`<li class="small">and ${rest} more in half-time.json</li>` : null;
  return html`<ul>${list.slice(0, HABITS_SHOWN).map((habit) => html`<li>${habitWords(habit)}</li>`)}${more}</ul>\n`;
}

/** Beside the calls the first few kinds; without calls all of them. */
function families(update: Adjustment): Html {
  const table = familiesTable(update);
  const rows = update.calls.length === 0 ? table.rows : table.rows.slice(0, FAMILIES_SHOWN);
  return html`<h2>Kinds of pressure</h2>\n${tableMarkup({ ...table, rows })}`;
}

function warnings({ warnings: list, tonight }: Adjustment): Html {
  const unknown =
    tonight.unknown.length === 0 ? [] : [`Not in defense.yaml: ${tonight.unknown.slice(0, 4).join(', ')}.`];
  const lines = [...list.slice(0, WARNINGS_SHOWN).map(warningWords), ...unknown];
  return lines.length === 0
    ? html`<p class="none">No path gives its coverage away tonight.</p>`
    : html`<ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>\n`;
}

function footWords(update: Adjustment, faults: number): string {
  const rows = faults === 0 ? '' : `${counted(faults, 'row was', 'rows were')} not usable and are in no number. `;
  const cut = percent(update.moved.discoveryRate);
  return `${rows}Moved: beyond what the forecast and the usual game-to-game swing allow, at most ${cut} false alarms expected. Points move with their answers alone: what changed in protection, the back or the release is named above and is not in the points. Guidance only; health and contact belong to licensed athletic trainers.`;
}
