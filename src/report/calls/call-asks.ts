import type { Call, CallLibrary, Demand } from '../../game/call-library.ts';
import { demandsOn } from '../../pressure/soundness/men.ts';
import { type Html, html } from '../page/html.ts';
import { plainWords } from '../words/label.ts';

/** What one call asks of each of our eleven, in the order of the roles. */
export function askedMen(
  library: CallLibrary,
  call: Call,
): readonly { readonly title: string; readonly job: string }[] {
  return library.roles.map(({ id, title }) => ({ title, job: jobWords(call, id) }));
}

function jobWords({ rush, cover }: Call, role: string): string {
  const rushing = rush.filter((man) => man.role === role).map(rushWords);
  const covering = cover
    .filter((man) => man.role === role)
    .map(({ job, adds }) => `${plainWords(job).toLowerCase()}${adds ? ', adds when his man blocks' : ''}`);
  return [...rushing, ...covering].join(' and ') || 'no job';
}

function rushWords({ lane, way, peels }: Call['rush'][number]): string {
  const where = lane.replace('_', ' ');
  const how = {
    straight: `rush ${where}`,
    loop: `loop to ${where}`,
    late_if_back_blocks: `join through ${where} when the back blocks`,
  };
  return `${how[way]}${peels ? ', peel with the back' : ''}`;
}

const COLUMNS: readonly { readonly demand: Demand; readonly head: string }[] = [
  { demand: 'rush', head: 'Rush or add' },
  { demand: 'peel', head: 'Peel' },
  { demand: 'drop', head: 'Zone under' },
  { demand: 'man', head: 'Man' },
  { demand: 'deep', head: 'Deep' },
  { demand: 'spy', head: 'Spy' },
];

/** In how many calls each man is asked for each kind of job. */
export function asksTable({ roles, calls }: CallLibrary): Html {
  const heads = COLUMNS.map(({ head }) => html`<th scope="col" class="n">${head}</th>`);
  const rows = roles.map((role) => {
    const asked = calls.map((call) => new Set(demandsOn(role.id, call)));
    const cells = COLUMNS.map(
      ({ demand }) => html`<td class="n">${asked.filter((set) => set.has(demand)).length}</td>`,
    );
    return html`<tr><th scope="row"><bdi>${role.title}</bdi></th>${cells}</tr>\n`;
  });
  return html`<table><caption>How many calls ask each man to do what (${calls.length} in all)</caption><thead><tr><th scope="col">Man</th>${heads}</tr></thead><tbody>${rows}</tbody></table>\n`;
}
