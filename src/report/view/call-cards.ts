import type { Call, CallLibrary } from '../../game/call-library.ts';
import type { MenuCall } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { callPicture } from '../field/call-picture.ts';
import { fieldDrawing } from '../field/field-drawing.ts';
import { roleLetters } from '../field/role-letters.ts';
import { type Html, html } from '../page/html.ts';
import { familyLabel } from '../words/label.ts';
import { coverWords, rushWords } from './call-words.ts';
import { calledMostOn } from './carry-table.ts';

/** The calls of the menu as cards: a field drawing, who rushes, who covers, and the coaching points. */
export function callCards(plan: WeekPlan, library: CallLibrary, calls: readonly MenuCall[]): Html {
  const cards = calls.map((menuCall) => {
    const call = library.calls.find((entry) => entry.name === menuCall.call);
    return call === undefined ? html`` : callCard(plan, library, { menuCall, call });
  });
  return html`<p>${KEY} ${lettersLine(library)}</p>\n<div class="cards">${cards}</div>\n`;
}

const KEY =
  'Drawn from behind the offense with the ball on the left hash, so the field side is at the right. Filled disc and arrow: rushes. Dashed arrow: only when the back stays in. Small hook: peels with the back. Open disc with a dashed line to a bar: drops to that zone. Dotted line to a ring: has that man.';

interface CardOf {
  readonly menuCall: MenuCall;
  readonly call: Call;
}

function callCard(plan: WeekPlan, library: CallLibrary, { menuCall, call }: CardOf): Html {
  const picture = callPicture(library, call);
  const rush = rushWords(library, call);
  const cover = coverWords(library, call);
  const words = `${call.name}, sent from the ${picture.sentFrom}. Rush: ${rush}. Cover: ${cover}.`;
  return html`<div class="card"><h4><bdi>${call.name}</bdi>: ${familyLabel(call.family).toLowerCase()}, ${call.coverage}</h4>
${fieldDrawing(picture, library.level, words)}
<p><b>Rush</b> ${rush}.</p><p><b>Cover</b> ${cover}.</p><p><b>Call it on</b> ${calledMostOn(plan, menuCall)}.</p>${pointsLine(call)}</div>\n`;
}

function pointsLine({ rules, sent_from }: Call): Html {
  const side = sent_from === 'either' ? 'either side' : `the ${sent_from.replaceAll('_', ' ')} side`;
  const points = rules.length === 0 ? '' : ` ${rules.join('; ')}.`;
  return html`<p><b>Sent from</b> ${side}.${points === '' ? null : html`<b> Points</b>`}${points === '' ? null : html` ${points.trim()}`}</p>`;
}

function lettersLine(library: CallLibrary): string {
  const letters = roleLetters(library.roles);
  return `${library.roles.map((role) => `${letters.get(role.id) ?? ''} ${role.title}`).join(', ')}.`;
}
