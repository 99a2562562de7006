import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asForecast, supposedShares, supposeScores, type WhatIfModel } from '../../src/report/view/what-if.ts';
import { whatIfModel } from '../../src/report/view/what-if-model.ts';
import { inventedPlan } from './invented-plan.ts';

const plan = inventedPlan();
const model = whatIfModel(plan) as WhatIfModel;

/** One call worked by hand: values against run, QB run, screen and quick. */
const HAND: WhatIfModel = {
  answers: ['run', 'quarterback_run', 'screen', 'quick'],
  calls: ['Rake'],
  trust: 0.5,
  situations: [{ id: 'all', label: 'All', shares: [0.4, 0.1, 0.2, 0.3], values: [[1, 3, -2, 0.5]] }],
};

describe('supposeScores', () => {
  it('with full trust gives the plan’s own figures back for every call on the menu, in every situation', () => {
    expect(model.calls.length).toBeGreaterThan(4);
    for (const situation of model.situations) {
      for (const { call, points } of supposeScores(model, situation, { ...asForecast(model, situation), trust: 1 })) {
        const score = plan.scores.calls.find((entry) => entry.call === call && entry.situation === situation.id);
        expect(points).toBeCloseTo(score?.points.mean ?? Number.NaN, 2);
      }
    }
  });

  it('opens at the trust the menu was chosen with, and with runs among what can be set', () => {
    for (const situation of model.situations) {
      const start = asForecast(model, situation);
      expect(start.trust).toBe(plan.settings.menu.trust);
      expect(start.run).toBeCloseTo((situation.shares[0] ?? 0) + (situation.shares[1] ?? 0), 9);
    }
  });

  it('ranks best first', () => {
    for (const situation of model.situations) {
      const points = supposeScores(model, situation, asForecast(model, situation)).map((score) => score.points);
      expect(points).toEqual([...points].sort((a, b) => b - a));
    }
  });

  it('agrees with a call worked by hand', () => {
    const [situation] = HAND.situations;
    if (!situation) throw new Error('a situation was written above');
    const pointsAt = (changes: object) =>
      supposeScores(HAND, situation, { ...asForecast(HAND, situation), ...changes })[0]?.points;
    // 0.4 x 1 + 0.1 x 3 + 0.2 x -2 + 0.3 x 0.5 = 0.45; worst answer -2; half trust -0.775.
    expect(pointsAt({ trust: 1 })).toBeCloseTo(0.45, 9);
    expect(pointsAt({ trust: 0 })).toBe(-2);
    expect(pointsAt({})).toBeCloseTo(-0.775, 9);
    // Runs at 100%: four in five by the back, as forecast: 0.8 x 1 + 0.2 x 3 = 1.4.
    expect(pointsAt({ trust: 1, run: 1, screen: 0, quick: 0 })).toBeCloseTo(1.4, 9);
  });
});

describe('supposedShares', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const answers = ['run', 'quarterback_run', 'screen', 'quick', 'dropback', 'deep_shot'];

  it('sum to one, keep proportions within runs and among the rest, and put each slider where it was set', () => {
    fc.assert(
      fc.property(share, share, share, (run, screen, quick) => {
        const shares = supposedShares(answers, [0.3, 0.1, 0.2, 0.2, 0.15, 0.05], { run, screen, quick });
        expect(shares.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 9);
        const over = Math.max(1, run + screen + quick);
        expect((shares[0] ?? 0) + (shares[1] ?? 0)).toBeCloseTo(run / over, 9);
        expect(shares[0]).toBeCloseTo(3 * (shares[1] ?? 0), 9);
        expect(shares[2]).toBeCloseTo(screen / over, 9);
        expect(shares[4]).toBeCloseTo(3 * (shares[5] ?? 0), 9);
      }),
      { numRuns: 100 },
    );
  });

  it('can suppose an answer they have never shown', () => {
    expect(supposedShares(['run', 'screen', 'quick'], [0.5, 0, 0.5], { run: 0.5, screen: 0.2, quick: 0.3 })).toEqual([
      0.5, 0.2, 0.3,
    ]);
  });
});
