import { describe, expect, it } from 'vitest';
import { openDataSize, typicalOpenDataSize } from '../../../src/pressure/evidence/open-data-size.ts';

describe('the size rule', () => {
  // Sizes printed with the table, computed there in two other programs (Python and R).
  it.each([
    { family: 'base', answer: 'screen', quality: 1, sizes: [251, 71.5, 34.5] },
    { family: 'base', answer: 'rpo_pass', quality: 1, sizes: [170.5, 63, 32.4] },
    { family: 'three_under', answer: 'screen', quality: 0.7, sizes: [142.8, 47, 23.4] },
    { family: 'four_under', answer: 'quick', quality: 0.7, sizes: [102.5, 41.6, 22] },
    { family: 'man_free_five', answer: 'dropback', quality: 0.7, sizes: [173.9, 49.9, 24.1] },
    { family: 'hot', answer: 'rpo_pass', quality: 0.5, sizes: [49.6, 24.9, 14.3] },
    { family: 'six_post', answer: 'play_action', quality: 0.5, sizes: [101.5, 33.5, 16.7] },
    { family: 'zero', answer: 'dropback', quality: 0.7, sizes: [147.5, 47.5, 23.5] },
    { family: 'seven_plus', answer: 'quick', quality: 0.5, sizes: [78.8, 30.6, 16] },
  ] as const)('gives $family against $answer $sizes snaps', ({ sizes, ...cell }) => {
    const found = (['pro', 'college', 'high_school'] as const).map((level) => openDataSize({ ...cell, level }));
    found.forEach((size, i) => {
      expect(size).toBeCloseTo(sizes[i] as number, 1);
    });
  });

  it('puts a typical high-school cell between 14 and 24 snaps', () => {
    expect(typicalOpenDataSize('high_school')).toBeGreaterThan(14);
    expect(typicalOpenDataSize('high_school')).toBeLessThan(24);
    expect(typicalOpenDataSize('pro')).toBeGreaterThan(typicalOpenDataSize('college'));
  });
});
