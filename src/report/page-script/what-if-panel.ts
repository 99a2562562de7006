import {
  asForecast,
  type SupposedScore,
  type Supposition,
  supposeScores,
  type WhatIfModel,
  type WhatIfSituation,
} from '../what-if.ts';
import { signed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { announce, element } from './element.ts';
import type { SituationChoice } from './situation-filter.ts';

/** Fills the what-if panel: sliders for what they do, and the families ranked anew by the arithmetic of the plan. */
export function fillWhatIf(choice: SituationChoice): void {
  const place = document.getElementById('what-if');
  const text = place?.dataset['model'];
  if (place === null || text === undefined) return;
  const model = JSON.parse(text) as WhatIfModel;
  const showSituation = (id: string) => {
    const situation = model.situations.find((entry) => entry.id === (id === '' ? 'all' : id)) ?? model.situations[0];
    if (situation !== undefined) place.replaceChildren(...panel(model, situation));
  };
  choice.onChange(showSituation);
  showSituation('');
  place.hidden = false;
}

interface Knob {
  readonly key: keyof Supposition;
  readonly label: string;
}

const KNOBS: readonly Knob[] = [
  { key: 'screen', label: 'Screens' },
  { key: 'quick', label: 'Quick game' },
  { key: 'backOut', label: 'Back gets out, of passes' },
  { key: 'trust', label: 'Trust in these shares' },
];

function panel(model: WhatIfModel, situation: WhatIfSituation): readonly Node[] {
  const start = asForecast(model, situation);
  const body = element('tbody');
  const state: { -readonly [Key in keyof Supposition]: Supposition[Key] } = { ...start };
  const show = () => {
    body.replaceChildren(...supposeScores(model, situation, state).map((score) => rankRow(score, model, situation)));
  };
  const knobs = KNOBS.filter(({ key }) => start[key] !== null).map(({ key, label }) =>
    knob(label, start[key] ?? 0, (value) => {
      state[key] = value;
      show();
      announce(`First now: ${body.rows[0]?.cells[0]?.textContent ?? ''}`);
    }),
  );
  const reset = element('button', { type: 'button' }, ['Back to the forecast']);
  reset.addEventListener('click', () => {
    Object.assign(state, start);
    for (const each of knobs) each.set();
    show();
  });
  show();
  return [
    element('h3', { id: 'what-if-title' }, [`What if? ${situation.label}`]),
    element('p', {}, [EXPLAINED]),
    element('div', { class: 'knobs' }, [...knobs.map((each) => each.label), reset]),
    element('table', { id: 'what-if-table' }, [caption(), heading(), body]),
  ];
}

const EXPLAINED =
  'Move a share to what you think they will do. The other answers keep their proportions. Trust below 100% mixes in their best answer against each family. The back moves the race and the trade’s marks for him.';

function caption(): HTMLElement {
  return element('caption', {}, ['The families under what you suppose']);
}

function heading(): HTMLElement {
  const titles = ['Family', 'Points saved per ten snaps', 'By the forecast', 'Somebody free, of passes'];
  return element('thead', {}, [
    element(
      'tr',
      {},
      titles.map((title) => element('th', { scope: 'col' }, [title])),
    ),
  ]);
}

function rankRow(score: SupposedScore, model: WhatIfModel, situation: WhatIfSituation): HTMLElement {
  const before = supposeScores(model, situation, asForecast(model, situation)).find(
    (entry) => entry.family === score.family,
  );
  return element('tr', { 'data-key': score.family }, [
    element('th', { scope: 'row' }, [score.label]),
    element('td', { class: 'n', 'data-v': String(score.points) }, [signed(score.points)]),
    element('td', { class: 'n' }, [signed(before?.points ?? 0)]),
    element('td', { class: 'n' }, [score.free === null ? 'cannot be told' : percent(score.free)]),
  ]);
}

interface KnobParts {
  readonly label: HTMLElement;
  readonly set: () => void;
}

function knob(text: string, start: number, onMove: (share: number) => void): KnobParts {
  const input = element('input', { type: 'range', min: '0', max: '100', step: '1' });
  const output = element('output');
  const write = () => {
    output.textContent = `${input.value}%`;
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
