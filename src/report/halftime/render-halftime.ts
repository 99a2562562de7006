import type { HalftimeUpdate } from '../../pressure/halftime/halftime.ts';
import type { MovedHabit } from '../../pressure/halftime/moved.ts';
import { tableMarkup } from '../layout/table.ts';
import { documentText } from '../page/document.ts';
import { type Html, html } from '../page/html.ts';
import { CAUTION_LINE } from '../words/caution-words.ts';
import { counted } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { HALFTIME_STYLE } from './halftime-style.ts';
import { answersTable, callsTable, familiesTable, situationsTable } from './halftime-table.ts';
import { habitWords, pressureWords, topLine, warningWords } from './halftime-words.ts';

/** Tendencies one screen has room for, of each kind. */
const HABITS_SHOWN = 4;
/** Warnings one screen has room for. */
const WARNINGS_SHOWN = 2;
/** Families shown beside the calls. */
const FAMILIES_SHOWN = 6;

/**
 * The halftime update as one HTML file that fits one screen of a tablet; what has no room is in the JSON.
 *
 * @param faults - live rows that could not be used
 */
export async function renderHalftime(update: HalftimeUpdate, faults: number): Promise<string> {
  const body = html`<main>
<div class="head"><h1>Halftime: <bdi>${update.opponent}</bdi></h1><span>${counted(update.liveSnaps, 'snap', 'snaps')} tonight, each counts ${percent(update.discount)} of a film snap</span>${update.invented ? html`<span class="invented">Invented data</span>` : null}</div>
<p class="top">${topLine(update)}</p>
<div class="columns">
<section><h2>Real changes (${update.moved.looked} tendencies checked)</h2>
${habits(update.moved.moved, 'None.')}<h2>Probably noise</h2>
${habits(update.moved.looksSo, 'Nothing else.')}<h2>What they do with the ball</h2>
${tableMarkup(answersTable(update))}</section>
<section><h2>Our calls now</h2>
${tableMarkup(callsTable(update))}<p class="small">Points saved per 10 snaps. Arrow: rank on Sunday. Used: of the calls planned for the game. Held: loss, stop or takeaway.</p>${families(update)}</section>
<section><h2>By situation</h2>
${tableMarkup(situationsTable(update))}<h2>What we have shown</h2>
<p>${pressureWords(update)}</p>${warnings(update)}</section>
</div>
<p class="small foot">${footWords(update, faults)}</p>
</main>`;
  return documentText({ title: `Halftime: ${update.opponent}`, style: HALFTIME_STYLE, script: '', body });
}

function habits(list: readonly MovedHabit[], none: string): Html {
  if (list.length === 0) return html`<p class="none">${none}</p>`;
  const rest = list.length - HABITS_SHOWN;
  const more = rest > 0 ? html`<li class="small">and ${rest} more in halftime.json</li>` : null;
  return html`<ul>${list.slice(0, HABITS_SHOWN).map((habit) => html`<li>${habitWords(habit)}</li>`)}${more}</ul>\n`;
}

/** Beside the calls the first few families; without calls all of them. */
function families(update: HalftimeUpdate): Html {
  const table = familiesTable(update);
  const rows = update.calls.length === 0 ? table.rows : table.rows.slice(0, FAMILIES_SHOWN);
  return html`<h2>Families</h2>\n${tableMarkup({ ...table, rows })}`;
}

function warnings({ warnings: list, tonight }: HalftimeUpdate): Html {
  const unknown =
    tonight.unknown.length === 0 ? [] : [`Not in defense.yaml: ${tonight.unknown.slice(0, 4).join(', ')}.`];
  const lines = [...list.slice(0, WARNINGS_SHOWN).map(warningWords), ...unknown];
  return lines.length === 0
    ? html`<p class="none">No path gives its coverage away tonight.</p>`
    : html`<ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>\n`;
}

function footWords(update: HalftimeUpdate, faults: number): string {
  const rows = faults === 0 ? '' : `${counted(faults, 'row', 'rows')} left out of the numbers for faults. `;
  const cut = percent(update.moved.discoveryRate);
  return `${rows}Real: beyond the forecast and the usual game-to-game swing, at most ${cut} false alarms. Points move with what they call, not with their protection. ${CAUTION_LINE}`;
}
