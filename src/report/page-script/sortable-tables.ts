import { announce, element } from './element.ts';

/** Puts a button into every heading of every table with at least two rows; it sorts the table by that column. */
export function makeTablesSortable(): void {
  for (const table of document.querySelectorAll('table')) {
    const body = table.tBodies[0];
    if (body !== undefined && body.rows.length > 1 && isPlain(table)) addButtons(table, body);
  }
}

function addButtons(table: HTMLTableElement, body: HTMLTableSectionElement): void {
  const headings = [...(table.tHead?.rows[0]?.cells ?? [])];
  headings.forEach((heading, column) => {
    const button = element('button', { type: 'button' }, [...heading.childNodes]);
    heading.append(button);
    button.addEventListener('click', () => {
      const direction = heading.getAttribute('aria-sort') === 'ascending' ? 'descending' : 'ascending';
      for (const other of headings) other.removeAttribute('aria-sort');
      heading.setAttribute('aria-sort', direction);
      body.append(...sortedRows(body, column, direction));
      announce(`${table.caption?.textContent ?? 'Table'}: sorted by ${button.textContent}, ${direction}`);
    });
  });
}

function sortedRows(body: HTMLTableSectionElement, column: number, direction: string): readonly HTMLTableRowElement[] {
  const sign = direction === 'ascending' ? 1 : -1;
  return [...body.rows].sort((a, b) => sign * compare(a.cells[column], b.cells[column]));
}

function compare(a: HTMLTableCellElement | undefined, b: HTMLTableCellElement | undefined): number {
  const first = a?.dataset['v'];
  const second = b?.dataset['v'];
  if (first !== undefined && second !== undefined) return Number(first) - Number(second);
  return (a?.textContent ?? '').localeCompare(b?.textContent ?? '', 'en', { numeric: true });
}

/** A matrix keeps its order, and so does what stands open: a coach reads it as it is. Folded tables can be sorted. */
function isPlain(table: HTMLTableElement): boolean {
  return table.closest('details') !== null && !table.classList.contains('grid');
}
