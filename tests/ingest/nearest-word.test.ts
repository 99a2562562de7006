import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestWord, slipsBetween } from '../../src/ingest/nearest-word.ts';

describe('slipsBetween', () => {
  it.each([
    { left: 'kitten', right: 'sitting', slips: 3, source: 'textbook example of the edit distance (from memory)' },
    {
      left: 'ca',
      right: 'abc',
      slips: 3,
      source: 'standard example that tells this distance from the unrestricted one',
    },
    { left: 'form', right: 'from', slips: 1, source: 'one swap of neighbors, by definition' },
    { left: '', right: 'abc', slips: 3, source: 'three letters added, by definition' },
  ])('$left and $right are $slips apart ($source)', ({ left, right, slips }) => {
    expect(slipsBetween(left, right)).toBe(slips);
  });

  it('is symmetric, 0 only for equal words, and at most 1 after one change', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-d]{0,6}$/), fc.stringMatching(/^[a-d]{0,6}$/), fc.nat(5), (a, b, at) => {
        expect(slipsBetween(a, b)).toBe(slipsBetween(b, a));
        expect(slipsBetween(a, b) === 0).toBe(a === b);
        expect(slipsBetween(a, `${a.slice(0, at)}x${a.slice(at + 1)}`)).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe('nearestWord', () => {
  const words = ['left', 'middle', 'right'];

  it('finds the only word that begins so, and the closest one', () => {
    expect(nearestWord('L', words)).toBe('left');
    expect(nearestWord('rigth', words)).toBe('right');
    expect(nearestWord('to_g', ['to_go', 'game'])).toBe('to_go');
  });

  it('offers nothing for a known word, for nothing, or when nothing is close', () => {
    expect(nearestWord('LEFT', words)).toBeUndefined();
    expect(nearestWord(' ', words)).toBeUndefined();
    expect(nearestWord('banana', words)).toBeUndefined();
    expect(nearestWord('re', ['releases_wide', 'releases_inside'])).toBeUndefined();
    expect(nearestWord('x', [])).toBeUndefined();
  });
});
