import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelAmong, levelByKind } from '../../../../src/pressure/forecast/additive/additive-levels.ts';

describe('levelAmong', () => {
  it.each([
    { value: undefined, level: 0, rule: 'a blank has no stretch' },
    { value: 4, level: 1, rule: 'below the first cut' },
    { value: 5, level: 2, rule: 'a cut belongs to the stretch above it' },
    { value: 9, level: 2, rule: 'between two cuts' },
    { value: 10, level: 3, rule: 'the last cut opens the last stretch' },
  ])('$rule', ({ value, level }) => {
    expect(levelAmong(value, [5, 10])).toBe(level);
  });

  it('never falls as the number rises', () => {
    const number = fc.integer({ min: -50, max: 50 });
    fc.assert(
      fc.property(number, number, fc.array(number, { maxLength: 6 }), (a, b, cuts) => {
        const ascending = cuts.toSorted((x, y) => x - y);
        expect(levelAmong(Math.min(a, b), ascending)).toBeLessThanOrEqual(levelAmong(Math.max(a, b), ascending));
      }),
    );
  });
});

describe('levelByKind', () => {
  const cuts = [[5], [], [3, 6]];
  it.each([
    { kind: 1, value: 4, level: 1 },
    { kind: 1, value: 5, level: 2 },
    { kind: 2, value: 99, level: 3 },
    { kind: 3, value: 1, level: 4 },
    { kind: 3, value: 7, level: 6 },
    { kind: 9, value: 7, level: 6 },
  ])('kind $kind at $value is stretch $level, counted through all kinds', ({ kind, value, level }) => {
    expect(levelByKind(kind, value, cuts)).toBe(level);
  });

  it('a kind of one stretch needs no number; one of several does, and a blank kind has none', () => {
    expect(levelByKind(2, undefined, cuts)).toBe(3);
    expect(levelByKind(1, undefined, cuts)).toBe(0);
    expect(levelByKind(undefined, 4, cuts)).toBe(0);
  });
});
