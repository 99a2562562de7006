import {
  COUNT_CLASSES,
  COUNT_COLUMNS,
  COUNT_SITUATIONS,
  COUNT_STATES,
  type CountColumn,
  type CountRow,
} from './count-row.ts';

/** What is wrong with a value of a file of tallies; `target` is written beside a class that is not one of its own. */
export type CountFault =
  | { readonly kind: 'no_column' | 'blank' | 'unknown' | 'no_count' }
  | { readonly kind: 'unknown_class'; readonly target: string };

/** Something wrong with a file of tallies. */
export interface CountProblem {
  /** 1-based row, the header being row 1. */
  readonly row: number;
  /** Place of the column, from 0; null where the column is missing. */
  readonly place: number | null;
  readonly column: CountColumn;
  readonly found: string;
  readonly fault: CountFault;
  /** Words that may stand there, or headers that may mean a missing one; empty where there is no such list. */
  readonly words: readonly string[];
}

/** Tallies read from a file, or everything that is wrong with it. */
export type CountReading =
  | { readonly kind: 'counts'; readonly rows: readonly CountRow[] }
  | { readonly kind: 'problems'; readonly problems: readonly CountProblem[] };

/**
 * Reads tallies from the cells of a file, header first. Columns may come in any order, and further ones are not looked
 * at. A file with one fault is refused whole: a sum with a hole in it is a wrong number.
 */
export function readCounts(cells: readonly (readonly string[])[]): CountReading {
  const header = (cells[0] ?? []).map((name) => name.trim().toLowerCase());
  const missing = COUNT_COLUMNS.filter((name) => !header.includes(name));
  if (missing.length > 0) return { kind: 'problems', problems: missing.map((name) => missingColumn(name, header)) };
  const places = COUNT_COLUMNS.map((name) => header.indexOf(name));
  const problems: CountProblem[] = [];
  const rows = cells.slice(1).flatMap((row, i) => {
    if (row.every((cell) => cell.trim() === '')) return [];
    const values = places.map((place) => (row[place] ?? '').trim());
    const faults = rowFaults(values);
    problems.push(
      ...faults.map(({ at, ...fault }) => ({
        row: i + 2,
        place: places[at] ?? null,
        column: COUNT_COLUMNS[at] as CountColumn,
        found: values[at] ?? '',
        ...fault,
      })),
    );
    return faults.length === 0 ? [rowOf(values)] : [];
  });
  return problems.length > 0 ? { kind: 'problems', problems } : { kind: 'counts', rows };
}

function missingColumn(column: CountColumn, header: readonly string[]): CountProblem {
  const words = header.filter((found) => !(COUNT_COLUMNS as readonly string[]).includes(found));
  return { row: 1, place: null, column, found: '', fault: { kind: 'no_column' }, words };
}

/** A fault of one value; `at` is its place in {@link COUNT_COLUMNS}. */
interface ValueFault {
  readonly at: number;
  readonly fault: CountFault;
  readonly words: readonly string[];
}

type Values = readonly string[];

function rowFaults(values: Values): ValueFault[] {
  const [offense = '', situation = '', state = '', target = '', name = '', count = ''] = values;
  const classes = COUNT_CLASSES.get(target);
  const unknown = (at: number, words: readonly string[]): ValueFault => ({ at, fault: { kind: 'unknown' }, words });
  return [
    ...(offense === '' ? [{ at: 0, fault: { kind: 'blank' } as const, words: [] }] : []),
    ...(situation === '' || COUNT_SITUATIONS.includes(situation) ? [] : [unknown(1, COUNT_SITUATIONS)]),
    ...(state === '' || COUNT_STATES.includes(state) ? [] : [unknown(2, COUNT_STATES)]),
    ...(classes === undefined ? [unknown(3, [...COUNT_CLASSES.keys()])] : []),
    ...(classes === undefined || classes.includes(name)
      ? []
      : [{ at: 4, fault: { kind: 'unknown_class', target } as const, words: classes }]),
    ...(isCount(count) ? [] : [{ at: 5, fault: { kind: 'no_count' } as const, words: [] }]),
  ];
}

/** Digits that a number holds exactly. */
function isCount(text: string): boolean {
  return /^\d{1,15}$/.test(text);
}

function rowOf([offense = '', situation = '', state = '', target = '', name = '', count = '']: Values): CountRow {
  return { offense, situation, state, target, class: name, count: Number(count) };
}
