import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, textAt } from '../../../src/game/film.ts';
import { codesBySnap } from '../../../src/pressure/snap/codes-by-snap.ts';
import { wordClasses } from '../../../src/pressure/snap/word-classes.ts';

const word = fc.option(fc.constantFrom('trey', 'deuce', 'empty', 'toString', '__proto__'), { nil: undefined });

describe('wordClasses', () => {
  it('gives every snap what its word means, charted or not', () => {
    fc.assert(
      fc.property(fc.array(word, { maxLength: 30 }), (words) => {
        const chart = filmFromRecords(words.map((formation) => (formation === undefined ? {} : { formation })));
        const meaning = (text: string | undefined) => `means ${text}`;
        const at = wordClasses(chart, 'formation', meaning);
        expect(words.map((_, i) => at(i))).toEqual(words.map((_, i) => meaning(textAt(chart, 'formation', i))));
      }),
      { numRuns: 100 },
    );
  });

  it('asks once for each different word', () => {
    const asked: (string | undefined)[] = [];
    const chart = filmFromRecords(['a', 'b', 'a', 'b', 'a'].map((formation) => ({ formation })));
    const at = wordClasses(chart, 'formation', (text) => asked.push(text));
    for (let i = 0; i < chart.size; i++) at(i);
    expect(asked).toEqual([undefined, 'a', 'b']);
  });

  it('takes a column nobody charted for not charted on every snap', () => {
    const at = wordClasses(filmFromRecords([{ gain: 1 }]), 'motion', (text) => text ?? 'not charted');
    expect(at(0)).toBe('not charted');
  });
});

describe('codesBySnap', () => {
  it('holds the code of every snap in order', () => {
    expect(codesBySnap(4, (i) => i * 85)).toEqual(Uint8Array.from([0, 85, 170, 255]));
    expect(codesBySnap(0, () => 1)).toEqual(new Uint8Array(0));
  });
});
