import type { Call, CallLibrary } from '../../game/call-library.ts';
import type { MenuCall } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { callPicture } from '../field/call-picture.ts';
import { fieldDrawing } from '../field/field-drawing.ts';
import { roleLetters } from '../field/role-letters.ts';
import { type Html, html } from '../page/html.ts';
import { ofTen } from '../words/fit-words.ts';
import { familyAndCoverage } from '../words/label.ts';
import { SIDE_WORDS } from '../words/side-words.ts';
import { coverWords, rushWords } from './call-words.ts';
import { calledMostOn } from './called-on.ts';
import { type TableView, textCell, words } from './table-view.ts';

/** The calls of the menu as cards: a field drawing, where it is called, the coaching points. */
export function callCards(plan: WeekPlan, library: CallLibrary, calls: readonly MenuCall[]): Html {
  const cards = calls.map((menuCall) => {
    const call = library.calls.find((entry) => entry.name === menuCall.call);
    return call === undefined ? html`` : callCard(plan, library, { menuCall, call });
  });
  return html`<div class="cards">${cards}</div>\n<p class="small">${KEY} ${lettersLine(library)}</p>\n`;
}

const KEY =
  'Seen from behind the offense, ball on the left hash, field to the right. Filled disc and arrow: rushes; dashed arrow: only if the back stays in; hook: peels with the back. Open disc: drops to the bar, or has the man in the ring.';

interface CardOf {
  readonly menuCall: MenuCall;
  readonly call: Call;
}

function callCard(plan: WeekPlan, library: CallLibrary, { menuCall, call }: CardOf): Html {
  const picture = callPicture(library, call);
  const rush = rushWords(library, call);
  const cover = coverWords(library, call);
  const shown = `${call.name}, sent from the ${picture.sentFrom}. Rush: ${rush}. Cover: ${cover}.`;
  return html`<div class="card"><h3><bdi>${call.name}</bdi> ▸ ${SIDE_WORDS[call.sent_from]}</h3>
${fieldDrawing(picture, library.level, shown)}
<p>${familyAndCoverage(call)}. ${calledMostOn(plan, menuCall)}. ${fitLine(menuCall)}${pointWords(call)}</p></div>\n`;
}

/** How often the call's idea holds on the snaps on which the mix calls it. */
function fitLine(menuCall: MenuCall): string {
  const { right, wrong } = menuCall;
  if (right + wrong === 0) return '';
  return `Where we call it, right on ${ofTen(right)}, wrong on ${ofTen(wrong)} of 10.`;
}

function pointWords({ rules }: Call): Html | null {
  return rules.length === 0 ? null : html` <b>${rules.join('; ')}.</b>`;
}

function lettersLine(library: CallLibrary): string {
  const letters = roleLetters(library.roles);
  return `${library.roles.map((role) => `${letters.get(role.id) ?? ''} ${role.title}`).join(', ')}.`;
}

/** Who rushes where and who covers what, call by call. */
export function whoDoesWhatTable(library: CallLibrary, calls: readonly MenuCall[]): TableView {
  const names = new Set(calls.map(({ call }) => call));
  return {
    id: 'who-does-what',
    caption: 'Who does what',
    columns: [words('Call'), words('Rush'), words('Cover')],
    rows: library.calls
      .filter(({ name }) => names.has(name))
      .map((call) => ({
        name: call.name,
        cells: [textCell(rushWords(library, call)), textCell(coverWords(library, call))],
      })),
    empty: 'no call is carried',
    phone: 'cards',
  };
}
