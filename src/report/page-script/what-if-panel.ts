import {
  asForecast,
  type Supposition,
  supposeScores,
  type WhatIfModel,
  type WhatIfSituation,
} from '../view/what-if.ts';
import { signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { announce, element } from './element.ts';

/** Fills the what-if panel: a situation, sliders for what they do, and our calls ranked by the arithmetic of the plan. */
export function fillWhatIf(): void {
  const place = document.getElementById('what-if');
  const text = place?.dataset['model'];
  if (place === null || text === undefined) return;
  const model = JSON.parse(text) as WhatIfModel;
  const body = element('div');
  const select = element(
    'select',
    {},
    model.situations.map(({ id, label }) => element('option', { value: id }, [label])),
  );
  const show = () => {
    const situation = model.situations.find(({ id }) => id === select.value);
    if (situation !== undefined) body.replaceChildren(...panel(model, situation));
  };
  select.addEventListener('change', show);
  place.replaceChildren(
    element('h3', {}, ['What if?']),
    element('p', {}, [EXPLAINED]),
    element('label', {}, ['Situation ', select]),
    body,
  );
  show();
  place.hidden = false;
}

const EXPLAINED =
  'Set what you think they will do; the rest keeps its proportions. At 100% trust the forecast rules; below that, part of the score assumes they have the answer.';

const KNOBS: readonly { readonly key: keyof Supposition; readonly label: string }[] = [
  { key: 'run', label: 'Runs' },
  { key: 'screen', label: 'Screens' },
  { key: 'quick', label: 'Quick game' },
  { key: 'trust', label: 'Trust in these shares' },
];

function panel(model: WhatIfModel, situation: WhatIfSituation): readonly Node[] {
  const start = asForecast(model, situation);
  const state: { -readonly [Key in keyof Supposition]: Supposition[Key] } = { ...start };
  const body = element('tbody');
  const show = () => body.replaceChildren(...rankRows(model, situation, state));
  const knobs = KNOBS.map(({ key, label }) =>
    knob(label, start[key], (share) => {
      state[key] = share;
      show();
      announce(`First now: ${body.rows[0]?.cells[0]?.textContent ?? ''}`);
    }),
  );
  const reset = element('button', { type: 'button' }, ['Back to the plan']);
  reset.addEventListener('click', () => {
    Object.assign(state, start);
    for (const each of knobs) each.set();
    show();
  });
  show();
  const caption = element('caption', {}, ['Our calls, if you are right']);
  const table = element('table', { id: 'what-if-table' }, [caption, heading(), body]);
  return [element('div', { class: 'knobs' }, [...knobs.map((each) => each.label), reset]), table];
}

function heading(): HTMLElement {
  const titles = ['Call', 'Points saved per 10 snaps', 'As planned'];
  const cells = titles.map((title, i) => element('th', { scope: 'col', class: i > 0 ? 'n' : null }, [title]));
  return element('thead', {}, [element('tr', {}, cells)]);
}

function rankRows(model: WhatIfModel, situation: WhatIfSituation, state: Supposition): readonly HTMLElement[] {
  const planned = supposeScores(model, situation, asForecast(model, situation));
  return supposeScores(model, situation, state).map(({ call, points }) => {
    const before = planned.find((entry) => entry.call === call)?.points ?? 0;
    return element('tr', { 'data-key': call }, [
      element('th', { scope: 'row' }, [call]),
      element('td', { class: 'n' }, [signed(points)]),
      element('td', { class: 'n' }, [signed(before)]),
    ]);
  });
}

interface KnobParts {
  readonly label: HTMLElement;
  readonly set: () => void;
}

function knob(text: string, start: number, onMove: (share: number) => void): KnobParts {
  const input = element('input', { type: 'range', min: '0', max: '100', step: '1' });
  const output = element('output');
  const write = () => {
    output.textContent = percent(Number(input.value) / 100);
  };
  const set = () => {
    input.value = String(Math.round(start * 100));
    write();
  };
  input.addEventListener('input', () => {
    write();
    onMove(Number(input.value) / 100);
  });
  set();
  return { label: element('label', {}, [`${text} `, input, output]), set };
}
