import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  BEYOND_WORDS,
  type CodeStore,
  codeOfWord,
  createStore,
  finishStore,
  growStore,
  type NumberStore,
} from '../../src/ingest/column-store.ts';

const numberStore = (name: 'gain' | 'time_to_throw') => createStore({ name, kind: 'number' }, 1) as NumberStore;
const codeStore = () => createStore({ name: 'note', kind: 'code' }, 1) as CodeStore;
const cell = <T>(value: fc.Arbitrary<T>) => fc.array(fc.option(value, { nil: undefined }), { maxLength: 80 });

/** Rows of room after each time it is used up: the next whole number at least, or far too many. */
const growths = fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 6 });

interface Growing {
  readonly store: NumberStore | CodeStore;
  readonly size: number;
  readonly steps: readonly number[];
}

function fill({ store, size, steps }: Growing, put: (i: number) => void): void {
  let capacity = 1;
  for (let i = 0; i < size; i++) {
    if (i === capacity) {
      capacity += steps[i % steps.length] ?? 1;
      growStore(store, capacity);
    }
    put(i);
  }
}

describe('a growing column', () => {
  it('gives back the numbers put in, however it grew', () => {
    const seconds = fc.integer({ min: 30, max: 1500 }).map((hundredths) => hundredths / 100);
    const columns = fc.constantFrom(
      { name: 'gain', values: cell(fc.integer({ min: -99, max: 99 })) } as const,
      { name: 'time_to_throw', values: cell(seconds) } as const,
    );
    const cases = columns.chain(({ name, values }) => fc.tuple(fc.constant(name), values, growths));
    fc.assert(
      fc.property(cases, ([name, values, steps]) => {
        const store = numberStore(name);
        const numbers = values.map((value) => value ?? Number.NaN);
        fill({ store, size: numbers.length, steps }, (i) => {
          store.numbers[i] = numbers[i]!;
        });
        const column = finishStore(store, numbers.length);
        expect(column.kind === 'number' && [...column.numbers]).toEqual(numbers);
      }),
      { numRuns: 200 },
    );
  });

  it('gives back the words put in, numbered in order of appearance', () => {
    const words = cell(fc.string({ minLength: 1, maxLength: 3 }));
    fc.assert(
      fc.property(words, growths, (values, steps) => {
        const store = codeStore();
        // A row that is not taken leaves its word behind, and the next one stands in its place.
        codeOfWord(store, 'a row kept out');
        fill({ store, size: values.length, steps }, (i) => {
          store.codes[i] = codeOfWord(store, values[i] ?? '');
        });
        const column = finishStore(store, values.length);
        expect(column.kind).toBe('code');
        if (column.kind !== 'code') return;
        expect([...column.codes].map((code) => column.values[code])).toEqual(values.map((word) => word ?? ''));
        expect(column.values).toEqual(['', ...new Set(values.filter((word) => word !== undefined))]);
      }),
      { numRuns: 200 },
    );
  });

  it('lets go of its entries when it is finished', () => {
    const [numbers, codes] = [numberStore('gain'), codeStore()];
    finishStore(numbers, 1);
    finishStore(codes, 1);
    expect([numbers.numbers.length, codes.codes.length]).toEqual([0, 0]);
  });

  it('gives words beyond the 65,534th one code, with words that say so', () => {
    const store = codeStore();
    const count = 65_540;
    growStore(store, count);
    for (let i = 0; i < count; i++) store.codes[i] = codeOfWord(store, `word ${i}`);
    const column = finishStore(store, count);
    if (column.kind !== 'code') throw new Error(column.kind);
    const shown = [...column.codes.subarray(65_533)].map((code) => column.values[code]);
    expect(shown).toEqual(['word 65533', ...Array.from({ length: 6 }, () => BEYOND_WORDS)]);
  });
});
