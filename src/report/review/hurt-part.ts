import type { Review } from '../../pressure/review/review.ts';
import type { HurtPlay } from '../../pressure/review/what-hurt.ts';
import { tableMarkup } from '../layout/table.ts';
import { type Html, html } from '../page/html.ts';
import { numberCell, numbers, type TableView, textCell, words } from '../view/table-view.ts';
import { beatenLines, firstSeenWords } from '../words/hurt-words.ts';
import { answerLabel } from '../words/label.ts';
import { situationName } from '../words/situation-label.ts';

/** Things the film had not shown that one side has room for. */
const FIRST_SEEN_SHOWN = 8;

/** What hurt us, and what the film had not shown. */
export function hurtPart({ hurt, firstSeen }: Review): Html {
  const calls = beatenLines(hurt.calls, (name) => name);
  const situations = beatenLines(hurt.situations, situationName);
  return html`<div class="halves"><section><h2>What hurt us</h2>
${tableMarkup(bigPlayTable(hurt.plays))}<h3>By call</h3>${list(calls, hurt.calls.length === 0 ? 'Our calls of the game are not charted.' : NOT_BEATEN.call)}<h3>By situation</h3>${list(situations, NOT_BEATEN.situation)}</section>
<section><h2>What the film did not show</h2>
${list(firstSeen.slice(0, FIRST_SEEN_SHOWN).map(firstSeenWords), NOTHING_NEW)}${more(firstSeen.length - FIRST_SEEN_SHOWN)}</section></div>\n`;
}

const NOT_BEATEN = {
  call: 'No call was beaten twice on three snaps or more.',
  situation: 'No situation was beaten twice on three snaps or more.',
} as const;

const NOTHING_NEW =
  'Nothing new: every charted formation, personnel group, play and motion of the game was on Sunday’s film.';

function list(lines: readonly string[], none: string): Html {
  return lines.length === 0
    ? html`<p class="none">${none}</p>`
    : html`<ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>`;
}

function more(rest: number): Html | null {
  return rest > 0 ? html`<p class="small">and ${rest} more in review.json</p>` : null;
}

/** Big plays that one side has room for. */
const PLAYS_SHOWN = 6;

function bigPlayTable(plays: readonly HurtPlay[]): TableView {
  const shown = plays.length > PLAYS_SHOWN ? `, the longest ${PLAYS_SHOWN} of ${plays.length}` : '';
  return {
    id: 'big-plays',
    caption: `Big plays (pass of 20, run of 12)${shown}`,
    columns: [words('Snap'), words('Situation'), words('Our call'), words('They'), numbers('Gain')],
    rows: plays.slice(0, PLAYS_SHOWN).map(({ snap, situation, call, answer, gain }) => ({
      name: snap,
      cells: [
        textCell(situation === null ? 'not charted' : situationName(situation)),
        textCell(call ?? 'not charted'),
        textCell(answer === null ? 'not charted' : answerLabel(answer)),
        gain === null ? textCell('not charted') : numberCell(String(gain), gain),
      ],
    })),
    empty: 'none',
  };
}
