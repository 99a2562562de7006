import { describe, expect, it } from 'vitest';
import { percentWords, wholePercent } from '../../../src/pressure/evidence/percent-words.ts';

describe('a share in words', () => {
  // Worked by hand.
  it.each([
    { share: 0, words: '0%' },
    { share: 0.314, words: '31%' },
    { share: 0.995, words: '100%' },
    { share: 1, words: '100%' },
  ])('$share is $words', ({ share, words }) => {
    expect(percentWords(share)).toBe(words);
    expect(`${wholePercent(share)}%`).toBe(words);
  });
});
