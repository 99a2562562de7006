import { announce, element } from './element.ts';

/** Tells others which situation is chosen; the empty id stands for all. */
export interface SituationChoice {
  /** Registers whom to tell. */
  readonly onChange: (listener: (id: string) => void) => void;
}

/** Adds the choice of a situation and of hiding thin rows to the bar; both act on every table of the page. */
export function addSituationFilter(): SituationChoice {
  const listeners: ((id: string) => void)[] = [];
  const choice: SituationChoice = { onChange: (listener) => void listeners.push(listener) };
  const tools = document.getElementById('tools');
  if (tools === null) return choice;
  const select = element('select', {}, [element('option', { value: '' }, ['all']), ...situationOptions()]);
  const thin = element('input', { type: 'checkbox' });
  const said = element('span', { class: 'meta' });
  const apply = () => {
    const shown = filterRows(select.value, thin.checked);
    const active = select.value !== '' || thin.checked;
    said.textContent = active ? `${shown} rows shown. Printing shows all rows.` : '';
    announce(active ? said.textContent : 'All rows shown');
    for (const listener of listeners) listener(select.value);
  };
  select.addEventListener('change', apply);
  thin.addEventListener('change', apply);
  tools.append(element('label', {}, ['Situation ', select]), element('label', {}, [thin, ' Hide thin rows']), said);
  tools.hidden = false;
  return choice;
}

function situationOptions(): readonly HTMLOptionElement[] {
  const names = new Map<string, string>();
  for (const row of document.querySelectorAll<HTMLTableRowElement>('#answers-by-situation-table tr[data-situation]')) {
    names.set(row.dataset['situation'] ?? '', row.cells[0]?.textContent ?? '');
  }
  return [...names].map(([id, name]) => element('option', { value: id }, [name]));
}

function filterRows(situation: string, hideThin: boolean): number {
  let shown = 0;
  for (const row of document.querySelectorAll<HTMLTableRowElement>('tr[data-situation], tr[data-thin]')) {
    const elsewhere =
      situation !== '' && row.dataset['situation'] !== undefined && row.dataset['situation'] !== situation;
    const off = elsewhere || (hideThin && row.dataset['thin'] !== undefined);
    row.classList.toggle('off', off);
    if (!off) shown += 1;
  }
  return shown;
}
