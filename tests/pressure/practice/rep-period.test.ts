import { describe, expect, it } from 'vitest';
import type { PracticeDay } from '../../../src/game/week-settings.ts';
import { fillPeriods, repPeriods } from '../../../src/pressure/practice/rep-period.ts';

const practice: readonly PracticeDay[] = [
  {
    day: 'Tue',
    periods: [
      { name: 'Early-down team', minutes: 10, reps: 2, contact: 'thud' },
      { name: 'Stretch', minutes: 10, reps: 0, contact: 'air' },
    ],
  },
  {
    day: 'Wed',
    periods: [
      { name: 'Third-down team', minutes: 10, reps: 3, contact: 'control' },
      { name: 'Walk', minutes: 10, reps: 2, contact: 'air' },
    ],
  },
];

describe('repetitions in their periods', () => {
  it('leaves out periods without pressure repetitions', () => {
    expect(repPeriods(practice).map(({ day, period, reps }) => [day, period, reps])).toEqual([
      ['Tue', 'Early-down team', 2],
      ['Wed', 'Third-down team', 3],
      ['Wed', 'Walk', 2],
    ]);
  });

  it('puts third downs into the third-down period and early downs into the early-down period', () => {
    const situations = [
      'third_long',
      'first_ten',
      'third_short',
      'second_long',
      'first_ten',
      'fourth_short',
      'first_ten',
    ];
    expect(fillPeriods(situations, repPeriods(practice))).toEqual([
      [1, 3],
      [0, 2, 5],
      [4, 6],
    ]);
  });

  it('fills a period with other situations when its own run out, and loses none', () => {
    const filled = fillPeriods(Array(7).fill('third_long'), repPeriods(practice));
    expect(filled.map((period) => period.length)).toEqual([2, 3, 2]);
    expect(filled.flat().sort()).toEqual([0, 1, 2, 3, 4, 5, 6]);
  });
});
