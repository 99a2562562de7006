import type { Call, CallLibrary } from '../../game/call-library.ts';
import { familyFacts, THEORY_WORDS } from '../../game/families.ts';
import type { SoundnessFault } from '../../pressure/soundness/fault.ts';
import { callPicture } from '../field/call-picture.ts';
import { fieldDrawing } from '../field/field-drawing.ts';
import { type Html, html } from '../page/html.ts';
import { coverWords, rushWords } from '../view/call-words.ts';
import { familyLabel, plainWords } from '../words/label.ts';
import { failureWords } from '../words/soundness-words.ts';
import { askedMen } from './call-asks.ts';

/** One call of the library: its drawing, whether it is sound, what it asks of whom, and its answers to other looks. */
export function libraryCard(library: CallLibrary, call: Call, faults: readonly SoundnessFault[]): Html {
  const picture = callPicture(library, call);
  const words = `${call.name}, sent from the ${picture.sentFrom}. Rush: ${rushWords(library, call)}. Cover: ${coverWords(library, call)}.`;
  return html`<article class="card"><h3><bdi>${call.name}</bdi></h3>
<p class="kind">${kindWords(call)}</p>
${fieldDrawing(picture, library.level, words)}
${soundnessLine(faults)}
<ul class="asks">${askedMen(library, call).map(({ title, job }) => html`<li><b><bdi>${title}</bdi></b> ${job}</li>`)}</ul>
${answers(call)}${points(call)}</article>\n`;
}

/** The theory of coverage a call teaches; none for the four-man base. */
export function theoryWords(call: Call): string {
  const { theory } = familyFacts(call.family);
  return theory === null ? 'always carried' : THEORY_WORDS[theory];
}

function kindWords(call: Call): string {
  const side = call.sent_from === 'either' ? 'either side' : `from the ${call.sent_from.replaceAll('_', ' ')}`;
  const taught = call.installed
    ? `${call.reps.weekly} reps a week`
    : `not taught yet: ${call.reps.first} reps to install`;
  const theory = call.family === 'base' ? '' : ` (${theoryWords(call)})`;
  return `${familyLabel(call.family)}${theory} · path ${call.path}, ${side} · ${call.coverage} · ${taught}`;
}

function soundnessLine(faults: readonly SoundnessFault[]): Html {
  const open = faults.filter(({ declared }) => !declared);
  const given = faults.filter(({ declared }) => declared).map(({ failure }) => failureWords(failure));
  const onPurpose = given.length === 0 ? null : html` On purpose: ${given.join('; ')}.`;
  if (open.length === 0) return html`<p><b>Sound.</b>${onPurpose}</p>`;
  return html`<p class="open"><b>Not sound: ${open.map(({ failure }) => failureWords(failure)).join('; ')}.</b>${onPurpose}</p>`;
}

function answers({ adjust }: Call): Html | null {
  const said = Object.entries(adjust).filter(([, words]) => words !== undefined);
  if (said.length === 0) return null;
  return html`<p class="small">${said.map(([look, words]) => html`<b>${plainWords(look)}:</b> ${words ?? ''}. `)}</p>`;
}

function points({ rules }: Call): Html | null {
  return rules.length === 0 ? null : html`<p class="small"><b>Points:</b> ${rules.join('; ')}.</p>`;
}
