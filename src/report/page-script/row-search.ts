import { announce, element } from './element.ts';

/** Rows from which on a table gets a search box. */
const LONG_TABLE = 12;

/** Puts a labelled search box above every long table; it hides the rows that do not hold the words typed. */
export function addRowSearch(): void {
  for (const table of document.querySelectorAll('table')) {
    const body = table.tBodies[0];
    if (body !== undefined && body.rows.length >= LONG_TABLE && !table.classList.contains('grid'))
      addSearch(table, body);
  }
}

function addSearch(table: HTMLTableElement, body: HTMLTableSectionElement): void {
  const input = element('input', { type: 'search', autocomplete: 'off' });
  const name = table.caption?.textContent ?? 'table';
  const count = element('span', {}, [`${body.rows.length} rows`]);
  const label = element('label', {}, [`Find in “${name}”: `, input]);
  const reset = element('button', { type: 'button' }, ['Clear']);
  const search = () => {
    const shown = showMatches(body, input.value);
    count.textContent = `${shown} of ${body.rows.length} rows`;
    announce(`${name}: ${count.textContent}`);
  };
  input.addEventListener('input', search);
  reset.addEventListener('click', () => {
    input.value = '';
    search();
  });
  table.closest('.scroll')?.before(element('div', { class: 'find' }, [label, reset, count]));
}

function showMatches(body: HTMLTableSectionElement, typed: string): number {
  const words = typed.toLowerCase().split(/\s+/);
  let shown = 0;
  for (const row of body.rows) {
    const text = (row.textContent ?? '').toLowerCase();
    const matches = words.every((word) => text.includes(word));
    row.classList.toggle('unmatched', !matches);
    if (matches) shown += 1;
  }
  return shown;
}
