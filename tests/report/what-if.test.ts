import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { whatIfModel } from '../../src/report/view/what-if-model.ts';
import { asForecast, supposedShares, supposeScores, type WhatIfModel } from '../../src/report/what-if.ts';
import { inventedPlan } from './invented-plan.ts';

const plan = inventedPlan();
const model = whatIfModel(plan) as WhatIfModel;

/** By hand: where the back is always in the first answer is worth 0.4 more, where he is always out 0.6 less. */
const BACK = { out: 0.4, whenIn: [[0.4, 0, 0]], whenOut: [[-0.6, 0, 0]] };

describe('supposeScores', () => {
  it('gives the plan back when nothing is supposed, in every situation', () => {
    for (const situation of model.situations) {
      for (const { family, points } of supposeScores(model, situation, asForecast(model, situation))) {
        const score = plan.scores.families.find((entry) => entry.family === family && entry.situation === situation.id);
        expect(points).toBeCloseTo(score?.points.mean ?? Number.NaN, 2);
      }
    }
  });

  it('ranks best first', () => {
    for (const situation of model.situations) {
      const points = supposeScores(model, situation, asForecast(model, situation)).map((score) => score.points);
      expect(points).toEqual([...points].sort((a, b) => b - a));
    }
  });

  it('without trust gives each family its worst answer', () => {
    const hand: WhatIfModel = {
      answers: ['run', 'screen', 'quick'],
      families: [{ id: 'hot', label: 'Hot', free: { backIn: 0.5, backOut: 0.2 } }],
      situations: [{ id: 'all', label: 'All', shares: [0.5, 0.2, 0.3], values: [[1, -2, 0.5]], back: BACK }],
    };
    const [situation] = hand.situations;
    if (!situation) throw new Error('a situation was written above');
    // By hand: 0.5 x 1 + 0.2 x -2 + 0.3 x 0.5 = 0.25; worst answer -2; free 0.4 x 0.2 + 0.6 x 0.5 = 0.38.
    const supposed = asForecast(hand, situation);
    expect(supposeScores(hand, situation, supposed)[0]?.points).toBeCloseTo(0.25, 9);
    expect(supposeScores(hand, situation, supposed)[0]?.free).toBeCloseTo(0.38, 9);
    expect(supposeScores(hand, situation, { ...supposed, trust: 0 })[0]?.points).toBe(-2);
    expect(supposeScores(hand, situation, { ...supposed, trust: 0.5 })[0]?.points).toBeCloseTo(-0.875, 9);
  });
});

describe('the back in supposeScores', () => {
  const situation = { id: 'all', label: 'All', shares: [0.5, 0.2, 0.3], values: [[1, -2, 0.5]], back: BACK };
  const hand: WhatIfModel = {
    answers: ['run', 'screen', 'quick'],
    families: [{ id: 'hot', label: 'Hot', free: null }],
    situations: [situation],
  };
  const pointsAt = (backOut: number) =>
    supposeScores(hand, situation, { ...asForecast(hand, situation), backOut })[0]?.points;

  it('moves the points in a straight line to both ends and leaves them where he is as forecast', () => {
    // By hand: 0.25 as forecast; in for good 0.25 + 0.5 x 0.4; out for good 0.25 - 0.5 x 0.6; halfway between 0.4 and 1.
    expect(pointsAt(0.4)).toBeCloseTo(0.25, 9);
    expect(pointsAt(0)).toBeCloseTo(0.45, 9);
    expect(pointsAt(1)).toBeCloseTo(-0.05, 9);
    expect(pointsAt(0.7)).toBeCloseTo(0.1, 9);
  });

  it('re-ranks the invented plan: the add-on rises with the back in and falls with him out', () => {
    const [first] = model.situations;
    if (first === undefined) throw new Error('the invented plan has situations');
    const addOn = (backOut: number) =>
      supposeScores(model, first, { ...asForecast(model, first), backOut }).find(({ family }) => family === 'add_on')
        ?.points ?? Number.NaN;
    expect(addOn(0)).toBeGreaterThan(addOn(0.4));
    expect(addOn(0.4)).toBeGreaterThan(addOn(1));
  });
});

describe('supposedShares', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });

  it('sum to one, keep the others in proportion and put screens and quick game where they were set', () => {
    fc.assert(
      fc.property(share, share, (screen, quick) => {
        const shares = supposedShares(['run', 'screen', 'quick', 'dropback'], [0.4, 0.2, 0.3, 0.1], { screen, quick });
        expect(shares.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 9);
        const over = Math.max(1, screen + quick);
        expect(shares[1]).toBeCloseTo(screen / over, 9);
        expect(shares[0]).toBeCloseTo(4 * (shares[3] ?? 0), 9);
      }),
      { numRuns: 100 },
    );
  });
});
