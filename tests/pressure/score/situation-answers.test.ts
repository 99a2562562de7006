import { describe, expect, it } from 'vitest';
import { ANSWERS } from '../../../src/game/answers.ts';
import { situationAnswers } from '../../../src/pressure/score/situation-answers.ts';
import { inventedForecast } from '../../report/invented-forecast.ts';

const total = (values: Readonly<Record<string, number>>) =>
  Object.values(values).reduce((sum, value) => sum + value, 0);

describe('what they will answer', () => {
  const chapter = inventedForecast();

  it('is forecast by situation, and of all snaps where a situation has no forecast', () => {
    const without = chapter.forecasts.filter(({ situation, target }) => {
      return target !== 'answer' || situation !== 'third_long';
    });
    const shareOf = (forecasts: typeof chapter.forecasts, from: string) => {
      const found = forecasts.find(({ situation, target }) => situation === from && target === 'answer');
      return ANSWERS.map((answer) => found?.classes.find(({ name }) => name === answer)?.share ?? Number.NaN);
    };
    for (const [forecasts, from] of [
      [chapter.forecasts, 'third_long'],
      [without, 'all'],
    ] as const) {
      const third = situationAnswers({ ...chapter, forecasts }).find(({ id }) => id === 'third_long');
      expect(third).toMatchObject({ known: true, down: 3 });
      const shares = shareOf(forecasts, from);
      ANSWERS.forEach((answer, k) => {
        expect(third?.shares[answer]).toBeCloseTo(shares[k] as number, 9);
      });
    }
  });

  it('is an ordinary offense for ten snaps where no answer is known, half of them runs, and says so', () => {
    for (const { alphas, shares, known } of situationAnswers({ ...chapter, forecasts: [] })) {
      expect(known).toBe(false);
      expect(total(alphas)).toBeCloseTo(10, 9);
      expect(total(shares)).toBeCloseTo(1, 9);
      // Common practice, no source: a high-school offense nobody knows runs on half of its snaps.
      expect(shares.run + shares.quarterback_run).toBeCloseTo(0.5, 9);
      expect(shares.dropback).toBeGreaterThan(shares.quick);
      expect(shares.quick).toBeGreaterThan(shares.screen);
    }
  });
});
