import type { CallLibrary } from '../game/call-library.ts';
import { FAMILIES } from '../game/families.ts';
import type { SoundnessFault } from '../pressure/soundness/fault.ts';
import { asksTable } from './calls/call-asks.ts';
import { CALLS_STYLE } from './calls/calls-style.ts';
import { libraryCard, theoryWords } from './calls/library-card.ts';
import { roleLetters } from './field/role-letters.ts';
import { documentText } from './page/document.ts';
import { type Html, html } from './page/html.ts';
import { familyLabel } from './words/label.ts';

/**
 * Every call we teach on one page, family by family: the drawing, whether it is sound, what it asks of whom.
 *
 * @param faults - of the whole library, declared or not
 */
export async function renderCalls(library: CallLibrary, faults: readonly SoundnessFault[]): Promise<string> {
  const body = html`<main><h1>Our calls</h1>
<p>${countWords(library, faults)}</p>
${familyTable(library, faults)}
<p>${KEY} ${lettersLine(library)}</p>
${FAMILIES.map((family) => familyPart(library, family, faults))}
<h2>Who is asked what</h2><div class="scroll" tabindex="0" role="region" aria-label="Who is asked what">${asksTable(library)}</div>
<p class="small">Guidance only: rules and contact limits belong to your state association and licensed athletic trainers.</p></main>\n`;
  return documentText({ title: 'Our calls', style: CALLS_STYLE, script: '', body });
}

const KEY =
  'Drawn from behind the offense with the ball on the left hash, so the field side is at the right; near is the side a call is sent from, far the other. Filled disc and arrow: rushes. Dashed arrow: only when the back stays in. Small hook: peels with the back. Open disc with a dashed line to a bar: drops to that zone. Dotted line to a ring: has that man.';

function countWords({ calls }: CallLibrary, faults: readonly SoundnessFault[]): string {
  const unsound = openCalls(faults).size;
  const paths = new Set(calls.map(({ path }) => path)).size;
  return `${calls.length} calls on ${paths} paths. ${unsound === 0 ? 'Every call is sound.' : `${unsound} of ${calls.length} not sound: no menu carries them until they are.`}`;
}

function openCalls(faults: readonly SoundnessFault[]): ReadonlySet<string> {
  return new Set(faults.filter(({ declared }) => !declared).map(({ call }) => call));
}

function familyTable({ calls }: CallLibrary, faults: readonly SoundnessFault[]): Html {
  const open = openCalls(faults);
  const rows = FAMILIES.flatMap((family) => {
    const ours = calls.filter((call) => call.family === family);
    const [first] = ours;
    if (first === undefined)
      return [
        html`<tr><th scope="row">${familyLabel(family)}</th><td></td><td class="n">0</td><td>no call</td></tr>\n`,
      ];
    const names = ours.map(({ name }) => `${name}${open.has(name) ? ' (not sound)' : ''}`).join(', ');
    return [
      html`<tr><th scope="row">${familyLabel(family)}</th><td>${theoryWords(first)}</td><td class="n">${ours.length}</td><td><bdi>${names}</bdi></td></tr>\n`,
    ];
  });
  return html`<div class="scroll" tabindex="0" role="region" aria-label="Calls by family"><table><caption>Calls by family and theory</caption><thead><tr><th scope="col">Family</th><th scope="col">Theory</th><th scope="col" class="n">Calls</th><th scope="col">Names</th></tr></thead><tbody>${rows}</tbody></table></div>\n`;
}

function familyPart(library: CallLibrary, family: string, faults: readonly SoundnessFault[]): Html | null {
  const calls = library.calls.filter((call) => call.family === family);
  if (calls.length === 0) return null;
  const cards = calls.map((call) =>
    libraryCard(
      library,
      call,
      faults.filter((fault) => fault.call === call.name),
    ),
  );
  return html`<h2>${familyLabel(family)}</h2><div class="cards">${cards}</div>\n`;
}

function lettersLine({ roles }: CallLibrary): string {
  const letters = roleLetters(roles);
  return `${roles.map(({ id, title }) => `${letters.get(id) ?? ''} ${title}`).join(', ')}.`;
}
