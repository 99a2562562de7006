import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cleanText } from '../../src/report/words/clean-text.ts';
import { gameDay } from '../../src/report/words/game-day.ts';
import { familyAndCoverage } from '../../src/report/words/label.ts';
import { fixed, listed, ordinal, signed } from '../../src/report/words/number-words.ts';
import { percent, percentRange } from '../../src/report/words/percent.ts';
import { countWords, expectWords, isThin, shareWithInterval, shareWords } from '../../src/report/words/share-words.ts';
import { sureOf } from '../../src/report/words/sure-words.ts';
import { share } from '../../src/stats/share.ts';

describe('familyAndCoverage', () => {
  it.each([
    ['man_free', 'man free', 'Man-free'],
    ['zero', 'zero', 'Zero'],
    ['hot', 'hot three', 'Hot, hot three'],
    ['three_under', 'Roof', 'Three-under, Roof'],
  ] as const)('of %s with the coverage %s says no word twice', (family, coverage, said) => {
    expect(familyAndCoverage({ family, coverage })).toBe(said);
  });
});

describe('shareWithInterval', () => {
  it.each([
    // Wilson 95% limits as tabulated for the trade: 7/10 = 0.397-0.892, 20/30 = 0.488-0.808, 0/8 = 0-0.324, 5/5 = 0.566-1.
    { count: 7, trials: 10, text: '7 of 10 (70%), long run 40-89%', source: 'computed table, Wilson 1927 formula' },
    { count: 20, trials: 30, text: '20 of 30 (67%), long run 49-81%', source: 'computed table, Wilson 1927 formula' },
    { count: 0, trials: 8, text: '0 of 8 (0%), long run 0-32%', source: 'computed table, Wilson 1927 formula' },
    { count: 5, trials: 5, text: '5 of 5 (100%), long run 57-100%', source: 'computed table, Wilson 1927 formula' },
    {
      count: 31,
      trials: 58,
      text: '31 of 58 (53%), long run 41-66%',
      source: 'house rule for every share on the page',
    },
  ])('writes $count of $trials with its count and interval ($source)', ({ count, trials, text }) => {
    expect(shareWithInterval(share(count, trials))).toBe(text);
    expect(text.startsWith(`${shareWords({ count, trials })}, `)).toBe(true);
  });

  it('says a place as it is read aloud', () => {
    expect([1, 2, 3, 4, 11, 12, 13, 21, 22, 30, 112].map(ordinal)).toEqual([
      '1st',
      '2nd',
      '3rd',
      '4th',
      '11th',
      '12th',
      '13th',
      '21st',
      '22nd',
      '30th',
      '112th',
    ]);
  });

  it('says "no snaps" of none, never 0%', () => {
    expect(shareWords(share(0, 0))).toBe('no snaps');
    expect(countWords(share(0, 0))).toBe('no snaps');
  });

  it('calls one to nineteen snaps thin, and none not thin but none', () => {
    expect([0, 1, 19, 20].map((trials) => isThin(share(0, trials)))).toEqual([false, true, true, false]);
  });
});

describe('expectWords', () => {
  it('writes a range of snaps, and one number where both ends meet', () => {
    expect(expectWords({ low: 9, high: 14 }, 20.2)).toBe('expect 9-14 of 20');
    expect(expectWords({ low: 3, high: 3 }, 5)).toBe('expect 3 of 5');
  });
});

describe('sureOf', () => {
  it('has four phrases with the limits of the glossary, and none for what is not known', () => {
    expect([1, 0.95, 0.949, 0.8, 0.799, 0.65, 0.649, 0, null].map(sureOf)).toEqual([
      'clear',
      'clear',
      'likely',
      'likely',
      'lean',
      'lean',
      'no difference',
      'no difference',
      'no difference',
    ]);
  });
});

describe('gameDay', () => {
  it('writes the day as it stands in week.yaml: no time zone moves it', () => {
    // Perpetual calendar: 6 November 2026 is a Friday, 29 February 2024 a Thursday, 1 January 2000 a Saturday.
    expect(['2026-11-06', '2024-02-29', '2000-01-01'].map(gameDay)).toEqual([
      'Fri Nov 6, 2026',
      'Thu Feb 29, 2024',
      'Sat Jan 1, 2000',
    ]);
    expect(gameDay('soon')).toBe('soon');
  });
});

describe('percent', () => {
  it('never rounds a share onto 0 or 100 that is neither', () => {
    expect(percent(0.002)).toBe('under 1%');
    expect(percent(0.998)).toBe('over 99%');
    expect(percent(0)).toBe('0%');
    expect(percent(1)).toBe('100%');
    expect(percentRange(0.407, 0.656)).toBe('41-66%');
  });
});

describe('signed and fixed', () => {
  it('use a true minus sign and leave zero without one', () => {
    expect([0.42, -0.34, 0.04, -0.04, 0].map(signed)).toEqual(['+0.4', '\u22120.3', '0.0', '0.0', '0.0']);
    expect(fixed(-1.005, 2)).toBe('\u22121.00');
  });
});

describe('listed', () => {
  it('joins words as a sentence does', () => {
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map(listed)).toEqual(['', 'a', 'a and b', 'a, b and c']);
  });
});

describe('cleanText', () => {
  it('takes out controls and marks that turn the direction of writing, and keeps letters of any script', () => {
    expect(cleanText('a\u0000b\u202ec\u2067d')).toBe('a b c d');
    expect(cleanText('שלום  مرحبا 🏈')).toBe('שלום مرحبا 🏈');
  });

  it('leaves no control character in any text and changes nothing when applied twice', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const cleaned = cleanText(text);
        expect(cleaned).not.toMatch(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/u);
        expect(cleanText(cleaned)).toBe(cleaned);
      }),
      { numRuns: 200 },
    );
  });
});
