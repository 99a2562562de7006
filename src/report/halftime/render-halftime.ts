import type { HalftimeUpdate } from '../../pressure/halftime/halftime.ts';
import type { MovedHabit } from '../../pressure/halftime/moved.ts';
import { tableMarkup } from '../layout/table.ts';
import { documentText } from '../page/document.ts';
import { type Html, html } from '../page/html.ts';
import { withoutEmptyColumns } from '../view/table-view.ts';
import { CAUTION_LINE } from '../words/caution-words.ts';
import { counted } from '../words/number-words.ts';
import { OPEN_DATA_LINE } from '../words/open-data-words.ts';
import { percent } from '../words/percent.ts';
import { HALFTIME_STYLE } from './halftime-style.ts';
import { answersTable, CALLS_SHOWN, callsTable, familiesTable, rushTable, situationsTable } from './halftime-table.ts';
import { habitWords, pressureWords, topLine, warningWords } from './halftime-words.ts';

/** Real changes, and noise, that one screen has room for. */
const [CHANGES_SHOWN, NOISE_SHOWN] = [4, 2];
/** Warnings one screen has room for. */
const WARNINGS_SHOWN = 2;

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
<section><h2>Real changes (of ${update.moved.looked} checked)</h2>
${habits(update.moved.moved, CHANGES_SHOWN, 'None.')}<h2>Probably noise</h2>
${habits(update.moved.looksSo, NOISE_SHOWN, 'Nothing else.')}<h2>When we sent four, five, six tonight</h2>
${tableMarkup(withoutEmptyColumns(rushTable(update)))}</section>
<section><h2>Our calls now</h2>
${tableMarkup(withoutEmptyColumns(callsTable(update)))}<p class="small">${moreCalls(update)}${CALLS_NOTE}</p>${update.calls.length === 0 ? families(update) : null}<h2>What we have shown</h2>
<p>${pressureWords(update)}</p>${warnings(update)}</section>
<section><h2>By situation</h2>
${tableMarkup(situationsTable(update))}<h2>What they do with the ball</h2>
${tableMarkup(answersTable(update))}</section>
</div>
<p class="small foot">${footWords(update, faults)}</p>
<p class="small credit">${OPEN_DATA_LINE}</p>
</main>`;
  return documentText({ title: `Halftime: ${update.opponent}`, style: HALFTIME_STYLE, script: '', body });
}

function habits(list: readonly MovedHabit[], shown: number, none: string): Html {
  if (list.length === 0) return html`<p class="none">${none}</p>`;
  const rest = list.length - shown;
  const more = rest > 0 ? html`<li class="small">and ${rest} more in halftime.json</li>` : null;
  return html`<ul>${list.slice(0, shown).map((habit) => html`<li>${habitWords(habit)}</li>`)}${more}</ul>\n`;
}

/** How many calls there was no room for. */
function moreCalls({ calls }: HalftimeUpdate): string {
  const rest = calls.length - CALLS_SHOWN;
  return rest > 0 ? `${counted(rest, 'more call', 'more calls')} in halftime.json. ` : '';
}

const CALLS_NOTE =
  'Sunday, Now: snaps of 10 right less wrong, by Sunday’s rules. Points: saved per 10 snaps, now. Called: tonight; Plan: for the whole game. Held: loss, stop or takeaway.';

/** Without calls the kinds of pressure take their place. */
function families(update: HalftimeUpdate): Html {
  return html`<h2>Kinds of pressure</h2>\n${tableMarkup(familiesTable(update))}`;
}

function warnings({ warnings: list, ours }: HalftimeUpdate): Html {
  const unknown = ours.unknown.length === 0 ? [] : [`Not in defense.yaml: ${ours.unknown.slice(0, 4).join(', ')}.`];
  const lines = [...list.slice(0, WARNINGS_SHOWN).map(warningWords), ...unknown];
  if (ours.charted.count === 0) return html``;
  return lines.length === 0
    ? html`<p class="none">No path gives its coverage away tonight.</p>`
    : html`<ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>\n`;
}

function footWords(update: HalftimeUpdate, faults: number): string {
  const rows = faults === 0 ? '' : `${counted(faults, 'row', 'rows')} left out of the numbers for faults. `;
  const cut = percent(update.moved.discoveryRate);
  const fit = update.calls.length > 0 && !update.fitMoved ? 'Fit is Sunday’s: the film is not in this folder. ' : '';
  return `${rows}${fit}Real: beyond the forecast and the usual game-to-game swing, at most ${cut} false alarms. Points move with what they call, not with their protection. ${CAUTION_LINE}`;
}
