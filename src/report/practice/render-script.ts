import { lookKindLabel } from '../../game/look-kinds.ts';
import type { LookCard } from '../../pressure/practice/look-card.ts';
import { CARD_COLUMNS } from '../../pressure/practice/look-card.ts';
import { MIX_PART } from '../../pressure/practice/script-pair.ts';
import type { PracticeScript } from '../../pressure/practice/script-result.ts';
import { INVENTED } from '../layout/masthead.ts';
import { tableMarkup } from '../layout/table.ts';
import { documentText } from '../page/document.ts';
import { type Html, html } from '../page/html.ts';
import { gameDay } from '../words/game-day.ts';
import { counted } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { cardDrawing } from './card-drawing.ts';
import { cardWords } from './card-words.ts';
import { CONTACT_CAUTIONS, WHO_DECIDES } from './contact-caution.ts';
import { SCRIPT_STYLE } from './script-style.ts';
import { contactTable, countTable, periodTable } from './script-table.ts';
import { shortageWords } from './shortage-words.ts';

/** Whom a script is for. */
export interface ScriptHead {
  readonly opponent: string;
  readonly us: string;
  readonly date: string;
  readonly invented: boolean;
}

/** The practice script with its scout cards as one printable HTML file; the same script gives the same bytes. */
export async function renderScript(script: PracticeScript, head: ScriptHead): Promise<string> {
  const body = html`<main>
<h1>Practice script: <bdi>${head.opponent}</bdi></h1>
<p class="meta"><bdi>${head.us}</bdi> · ${gameDay(head.date)} · ${counted(script.reps.length, 'rep', 'reps')} · ${counted(script.cards.length, 'scout card', 'scout cards')}</p>
${head.invented ? INVENTED : null}${shortageMarkup(shortageWords(script))}
<h2>Contact limits and safety</h2>
${tableMarkup(contactTable(script.contact))}${cautionMarkup()}
<h2>The week</h2>
${periodsMarkup(script)}
<h2>Reps by call and look</h2>
<p class="small">${HOW_COUNTED}</p>
${tableMarkup(countTable(script))}
<h2 class="sheet">Scout cards</h2>
<p class="small">Seen from behind the offense. Thick: the ball or its carrier. Thin: protection and the back. Dashed: motion.</p>
<div class="cards">${script.cards.map(cardMarkup)}</div>
</main>`;
  return documentText({ title: `Practice script: ${head.opponent}`, style: SCRIPT_STYLE, script: '', body });
}

const HOW_COUNTED = `Every call sees its likeliest look, its worst and its make-or-break looks at least once. New calls then get the reps the menu asks for to install them. Of the rest ${percent(MIX_PART)} follow how often the menu calls each call, the others what defense.yaml asks for to keep it, against the looks we expect where it is called. The base is repped as often as we call it.`;

function shortageMarkup(shortages: readonly string[]): Html | null {
  return shortages.length === 0
    ? null
    : html`<div class="short"><p>Too few reps</p><ul>${shortages.map((line) => html`<li>${line}</li>`)}</ul></div>`;
}

function cautionMarkup(): Html {
  const lines = CONTACT_CAUTIONS.map(
    ({ topic, words, source }) => html`<li><b>${topic}.</b> ${words} <span class="source">(${source})</span></li>`,
  );
  return html`<p><b>${WHO_DECIDES}</b></p><ul>${lines}</ul>`;
}

/** Reasons are explained once, above the tables. */
function periodsMarkup({ periods, reps }: PracticeScript): Html {
  let from = 0;
  const parts = periods.map(({ day, period, minutes, contact, reps: size }, i) => {
    const own = reps.slice(from, from + size).filter((rep) => rep.day === day && rep.period === period);
    from += own.length;
    const caption = `${day}: ${period}, ${minutes} minutes, contact level ${contact}`;
    return tableMarkup(periodTable(own, { id: `period-${i + 1}`, caption }));
  });
  return html`<p class="small">Why: likeliest look for the call, its worst, or make-or-break; blank: what we expect there.</p>${parts}`;
}

function cardMarkup(card: LookCard): Html {
  const film =
    card.filmSnaps === 0
      ? 'Not on their film: common practice.'
      : `${counted(card.filmSnaps, 'such snap', 'such snaps')} on film; drawn as ${card.from ?? 'charted'}.`;
  const lacking = card.filmSnaps === 0 ? [] : DRAWN.filter((column) => card.shows[column] === undefined);
  const gaps = lacking.length === 0 ? '' : `Not charted there: ${lacking.join(', ').replaceAll('_', ' ')}.`;
  return html`<article class="card" id="card-${card.number}"><h3><span class="number">${card.number}</span>${lookKindLabel(card.kind)}</h3>
${cardDrawing(card)}<p>${cardWords(card)}</p><p class="small">${film} ${gaps}</p></article>\n`;
}

/** Columns the drawing stands on. */
const DRAWN = CARD_COLUMNS.filter(
  (column) => !['formation', 'personnel', 'concept', 'target_zone', 'protectors'].includes(column),
);
