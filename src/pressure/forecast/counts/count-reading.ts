import { COUNT_CLASSES, COUNT_COLUMNS, COUNT_SITUATIONS, COUNT_STATES, type CountRow } from './count-row.ts';

/** Something wrong with a file of tallies. */
export interface CountProblem {
  /** 1-based row, the header being row 1. */
  readonly row: number;
  /** Place of the column, from 0; null where a whole row or column is missing. */
  readonly column: number | null;
  readonly header: string;
  readonly found: string;
  /** Completes the sentence "<found> ...". */
  readonly rule: string;
  /** Words that may stand there, for a suggestion; empty where there is no such list. */
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
    const faults = rowFaults(values).map((fault) => ({ ...fault, row: i + 2, column: places[fault.at] ?? null }));
    problems.push(...faults.map(({ at, ...fault }) => ({ ...fault, header: COUNT_COLUMNS[at] ?? '' })));
    return faults.length === 0 ? [rowOf(values)] : [];
  });
  return problems.length > 0 ? { kind: 'problems', problems } : { kind: 'counts', rows };
}

function missingColumn(name: string, header: readonly string[]): CountProblem {
  const rule = `has no column "${name}"; a file of tallies has ${COUNT_COLUMNS.join(', ')}`;
  const spare = header.filter((found) => !(COUNT_COLUMNS as readonly string[]).includes(found));
  return { row: 1, column: null, header: name, found: '', rule, words: spare };
}

/** A fault of one value; `at` is its place among the columns of tallies. */
interface ValueFault {
  readonly at: number;
  readonly found: string;
  readonly rule: string;
  readonly words: readonly string[];
}

type Values = readonly string[];

function rowFaults(values: Values): ValueFault[] {
  const [offense = '', situation = '', state = '', target = '', name = '', count = ''] = values;
  const classes = COUNT_CLASSES.get(target);
  const fault = (at: number, rule: string, words: readonly string[] = []) => ({
    at,
    found: values[at] ?? '',
    rule,
    words,
  });
  const unknown = (at: number, what: string, words: readonly string[]) =>
    fault(at, `is no ${what}; it is one of ${words.join(', ')}`, words);
  return [
    ...(offense === '' ? [fault(0, 'is blank; every tally names its offense')] : []),
    ...(situation === '' || COUNT_SITUATIONS.includes(situation) ? [] : [unknown(1, 'situation', COUNT_SITUATIONS)]),
    ...(state === '' || COUNT_STATES.includes(state) ? [] : [unknown(2, 'state of a game', COUNT_STATES)]),
    ...(classes === undefined ? [unknown(3, 'target', [...COUNT_CLASSES.keys()])] : []),
    ...(classes === undefined || classes.includes(name) ? [] : [unknown(4, `class of ${target}`, classes)]),
    ...(isCount(count) ? [] : [fault(5, 'is not a whole number of at least 0')]),
  ];
}

/** Digits that a number holds exactly. */
function isCount(text: string): boolean {
  return /^\d{1,15}$/.test(text);
}

function rowOf([offense = '', situation = '', state = '', target = '', name = '', count = '']: Values): CountRow {
  return { offense, situation, state, target, class: name, count: Number(count) };
}
