import { describe, expect, it } from 'vitest';
import { emptyScoreDraws, writeScoreDraws } from '../../../src/pressure/score/score-draws.ts';

describe('draws for the menu', () => {
  it('lie at (draw * calls + call) * situations + situation, and one call never touches another', () => {
    const draws = emptyScoreDraws(['Stay', 'Ember'], ['first_ten', 'third_long', 'third_short'], 2);
    expect(draws.points).toHaveLength(12);
    writeScoreDraws(draws, { call: 1, situation: 2 }, Float64Array.of(0.5, -0.5, 9));
    // Worked by hand: draw 0 is at (0 * 2 + 1) * 3 + 2, draw 1 at (1 * 2 + 1) * 3 + 2; the third value has no place.
    expect(Array.from(draws.points)).toEqual([0, 0, 0, 0, 0, 0.5, 0, 0, 0, 0, 0, -0.5]);
  });
});
