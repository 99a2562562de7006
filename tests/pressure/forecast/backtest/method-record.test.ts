import { describe, expect, it } from 'vitest';
import { coverageOf } from '../../../../src/pressure/forecast/backtest/count-coverage.ts';
import type { ForecastMethod, MethodId } from '../../../../src/pressure/forecast/backtest/forecast-method.ts';
import {
  type MethodRecord,
  methodScore,
  recordGame,
} from '../../../../src/pressure/forecast/backtest/method-record.ts';

const method = (id: MethodId, against: readonly MethodId[] = []): ForecastMethod => {
  return { id, knows: 'plan', against, fit: () => null };
};

/** The record of a method that gave the first class these shares in each game, and whether it came. */
function recordOf(id: MethodId, games: readonly Game[], against: readonly MethodId[] = []): MethodRecord {
  const record: MethodRecord = { method: method(id, against), games: new Map(), stated: [], came: [] };
  games.forEach(({ offense, forecasts, came }, window) => {
    const outcomes = came.map((yes) => (yes === 1 ? 0 : 1));
    const rows = forecasts.map((_, i) => i);
    recordGame(record, (row) => [forecasts[row]!, 1 - forecasts[row]!], {
      window,
      offense,
      rows,
      outcomes,
      classes: 2,
    });
  });
  return record;
}

interface Game {
  readonly offense: string;
  readonly forecasts: readonly number[];
  readonly came: readonly number[];
}

describe('methodScore', () => {
  it("gives Brier's ten forecasts of rain half of his 0.19 (Brier 1950, Monthly Weather Review 78:1, table 1; from memory)", () => {
    const forecasts = [0.7, 0.9, 0.8, 0.4, 0.2, 0, 0, 0, 0, 0.1];
    const rain = recordOf('own_rate', [{ offense: 'a', forecasts, came: [0, 1, 1, 1, 0, 0, 0, 0, 0, 0] }]);
    const score = methodScore(rain, [], 2)!;
    expect(score.brier).toBeCloseTo(0.095, 12);
    expect(score).toMatchObject({ games: 1, snaps: 10, right: 8 });
  });

  it('gives the log loss 0.21616 of the scikit-learn documentation', () => {
    const game = { offense: 'a', forecasts: [0.9, 0.1, 0.2, 0.65], came: [1, 0, 0, 1] };
    expect(methodScore(recordOf('own_rate', [game]), [], 2)!.logLoss.toFixed(5)).toBe('0.21616');
  });

  it('weighs every game alike, however many snaps it had', () => {
    const games = [
      { offense: 'a', forecasts: [0.5], came: [1] },
      { offense: 'a', forecasts: [0.25, 0.25, 0.25], came: [1, 1, 1] },
    ];
    expect(methodScore(recordOf('own_rate', games), [], 2)!.logLoss).toBeCloseTo((Math.log(2) + Math.log(4)) / 2, 12);
  });

  it('pairs methods by game, with the offense as unit from three offenses on and no error under three units', () => {
    const game = (offense: string, forecast: number): Game => ({ offense, forecasts: [forecast], came: [1] });
    const names = ['a', 'a', 'b', 'b', 'c', 'c'];
    const plain = recordOf(
      'own_rate',
      names.map((name) => game(name, 0.5)),
    );
    const better = recordOf(
      'chain_plan_own',
      names.map((name, i) => game(name, i === 5 ? 0.25 : 0.9)),
      ['own_rate', 'archive_rate'],
    );
    const [paired] = methodScore(better, [plain, better], 2)!.against;
    expect(paired).toMatchObject({ id: 'own_rate', games: 6, won: 5, unit: 'offense' });
    // Means by offense: ln(5/9) twice and (ln(5/9) + ln 2) / 2; the error of a mean of three.
    const means = [Math.log(5 / 9), Math.log(5 / 9), (Math.log(5 / 9) + Math.log(2)) / 2];
    const mean = means.reduce((sum, value) => sum + value, 0) / 3;
    const error = Math.sqrt(means.reduce((sum, value) => sum + (value - mean) ** 2, 0) / 2 / 3);
    expect(paired!.difference).toBeCloseTo(mean, 12);
    expect(paired!.standardError).toBeCloseTo(error, 12);
    const two = names.slice(0, 2).map((name) => game(name, 0.5));
    const short = methodScore(recordOf('chain_line_own', two, ['own_rate']), [plain], 2)!.against[0]!;
    expect(short).toMatchObject({ unit: 'game', games: 2, standardError: null });
  });

  it('has no score for a method that could forecast nothing', () => {
    expect(methodScore(recordOf('own_rate', []), [], 2)).toBeNull();
  });
});

describe('coverageOf', () => {
  it('adds up ranges by the size of their bucket and has nothing to say of a size without one', () => {
    const check = (held: boolean, width: number) => ({ size: 'from_20', held, width, due: 0.96 }) as const;
    const rows = coverageOf([check(true, 0.4), check(false, 0.6)]);
    expect(rows.find(({ size }) => size === 'from_20')).toMatchObject({
      intervals: 2,
      covered: 1,
      width: 0.5,
      due: 0.96,
    });
    expect(rows.find(({ size }) => size === 'game')).toMatchObject({
      intervals: 0,
      covered: 0,
      width: null,
      due: null,
    });
  });
});
