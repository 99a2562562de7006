import type { ChartColumn } from './chart.ts';

/** A growing column of words; `codes` is longer than what is in use, and replaced when it grows. */
export interface CodeStore {
  readonly kind: 'code';
  codes: Uint16Array;
  readonly values: string[];
  readonly known: Map<string, number>;
}

/** A growing column of numbers; `numbers` is longer than what is in use, and replaced when it grows. */
export interface NumberStore {
  readonly kind: 'number';
  numbers: Float64Array;
}

/** A growing column of a chart. */
export type ColumnStore = CodeStore | NumberStore;

/** The last code stands for every word that no longer fits into 16 bits. */
const LAST_CODE = 0xffff;

/** What is shown for a word beyond the 65,534 different ones a column can hold. */
export const BEYOND_WORDS = '(more different texts than can be kept apart)';

/** An empty growing column. */
export function createStore(kind: ChartColumn['kind'], capacity: number): ColumnStore {
  if (kind === 'number') return { kind, numbers: new Float64Array(capacity) };
  return { kind, codes: new Uint16Array(capacity), values: [''], known: new Map([['', 0]]) };
}

/** Room for `capacity` entries; what is stored stays. */
export function growStore(store: ColumnStore, capacity: number): void {
  if (store.kind === 'number') {
    const numbers = new Float64Array(capacity);
    numbers.set(store.numbers);
    store.numbers = numbers;
  } else {
    const codes = new Uint16Array(capacity);
    codes.set(store.codes);
    store.codes = codes;
  }
}

/** The code of a word in the column's own list, added when new; the words beyond the last share one code. */
export function codeOfWord(store: CodeStore, word: string): number {
  const found = store.known.get(word);
  if (found !== undefined) return found;
  const code = store.values.length;
  if (code > LAST_CODE) return LAST_CODE;
  const own = code === LAST_CODE ? BEYOND_WORDS : detached(word);
  store.values.push(own);
  store.known.set(own, code);
  return code;
}

/**
 * The column cut to its first `size` entries, with only the words that stand there, in order of appearance. The store
 * lets go of its entries, so that a long chart is never in memory twice.
 */
export function finishStore(store: ColumnStore, size: number): ChartColumn {
  if (store.kind === 'number') {
    const numbers = store.numbers.slice(0, size);
    store.numbers = new Float64Array(0);
    return { kind: 'number', numbers };
  }
  const codes = store.codes.slice(0, size);
  store.codes = new Uint16Array(0);
  const renumbered = new Int32Array(store.values.length).fill(-1);
  renumbered[0] = 0;
  const values = [''];
  for (let i = 0; i < size; i++) {
    const code = codes[i] ?? 0;
    if (renumbered[code] === -1) renumbered[code] = values.push(store.values[code] ?? '') - 1;
    codes[i] = renumbered[code] ?? 0;
  }
  return { kind: 'code', codes, values };
}

/** A copy that does not keep the whole text of the file alive, as a slice of it would. */
export function detached(text: string): string {
  return ` ${text}`.slice(1);
}
