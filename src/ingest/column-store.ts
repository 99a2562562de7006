import type { ColumnName } from '../game/columns.ts';
import type { FilmColumn } from '../game/film.ts';
import { FREE_WORD_COLUMNS, freeWordKey } from '../game/free-word.ts';
import { createNumbers, type NumberEntries, numbersLike } from '../game/number-entries.ts';

/** A growing column of words; `codes` is longer than what is in use, and replaced when it grows. */
export interface CodeStore {
  readonly kind: 'code';
  codes: Uint16Array;
  readonly values: string[];
  /** The code of a word by what it is compared by. */
  readonly known: Map<string, number>;
  /** Other spellings of free words that were met, each with the one that stands for it. */
  readonly spellings: Map<string, string>;
  readonly isFree: boolean;
}

/** A growing column of numbers; `numbers` is longer than what is in use, and replaced when it grows. */
export interface NumberStore {
  readonly kind: 'number';
  numbers: NumberEntries;
}

/** A growing column of a chart. */
export type ColumnStore = CodeStore | NumberStore;

/** The last code stands for every word that no longer fits into 16 bits. */
const LAST_CODE = 0xffff;

/** A finished column may take up to this many times the memory its entries need; judgment. */
const MOST_SPARE = 1.3;

/** What is shown for a word beyond the 65,534 different ones a column can hold. */
export const BEYOND_WORDS = '(more different texts than can be kept apart)';

/** An empty growing column. */
export function createStore(
  { name, kind }: { readonly name: ColumnName; readonly kind: FilmColumn['kind'] },
  capacity: number,
): ColumnStore {
  if (kind === 'number') return { kind, numbers: createNumbers(name, capacity) };
  const isFree = FREE_WORD_COLUMNS.has(name);
  return {
    kind,
    codes: new Uint16Array(capacity),
    values: [''],
    known: new Map([['', 0]]),
    spellings: new Map(),
    isFree,
  };
}

/** Room for `capacity` entries; what is stored stays. */
export function growStore(store: ColumnStore, capacity: number): void {
  if (store.kind === 'number') {
    const numbers = numbersLike(store.numbers, capacity);
    numbers.set(store.numbers);
    store.numbers = numbers;
  } else {
    const codes = new Uint16Array(capacity);
    codes.set(store.codes);
    store.codes = codes;
  }
}

/**
 * The code of a word in the column's own list, added when new; the words beyond the last share one code. Free words that
 * differ only in case or spaces share the code of the first of them.
 */
export function codeOfWord(store: CodeStore, word: string): number {
  const key = store.isFree ? freeWordKey(word) : word;
  const found = store.known.get(key);
  if (found !== undefined) {
    if (store.isFree) noteSpelling(store, word, found);
    return found;
  }
  const code = store.values.length;
  if (code > LAST_CODE) return LAST_CODE;
  const own = code === LAST_CODE ? BEYOND_WORDS : detached(word);
  store.values.push(own);
  store.known.set(code === LAST_CODE ? own : detached(key), code);
  return code;
}

/** Remembers a spelling that is not the one shown. */
function noteSpelling({ values, spellings }: CodeStore, word: string, code: number): void {
  const shown = values[code] ?? '';
  if (word !== shown && code !== LAST_CODE) spellings.set(detached(word), shown);
}

/**
 * The column cut to its first `size` entries, with only the words that stand there, in order of appearance. The store
 * lets go of its entries, so that a long chart is never in memory twice.
 */
export function finishStore(store: ColumnStore, size: number): FilmColumn {
  if (store.kind === 'number') {
    const numbers = cut(store.numbers, size);
    store.numbers = numbersLike(numbers, 0);
    return { kind: 'number', numbers };
  }
  const codes = cut(store.codes, size);
  store.codes = new Uint16Array(0);
  return { kind: 'code', codes, values: renumber(codes, store.values) };
}

/** Renumbers the codes in order of appearance and returns the words that remain. */
function renumber(codes: Uint16Array, values: readonly string[]): readonly string[] {
  const fresh = new Uint16Array(values.length);
  const kept = [''];
  for (let i = 0; i < codes.length; i++) {
    const code = codes[i] as number;
    if (code === 0) continue;
    if (fresh[code] === 0) fresh[code] = kept.push(values[code] ?? '') - 1;
    codes[i] = fresh[code] ?? 0;
  }
  return kept;
}

/** The first `size` entries: in place when little room is left over, as a copy when much is. */
export function cut<Entries extends Uint16Array | Uint32Array | NumberEntries>(
  entries: Entries,
  size: number,
): Entries {
  const roomy = entries.length > size * MOST_SPARE + 1024;
  return (roomy ? entries.slice(0, size) : entries.subarray(0, size)) as Entries;
}

/** A copy that does not keep the whole text of the file alive, as a slice of it would. */
export function detached(text: string): string {
  return ` ${text}`.slice(1);
}
