import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { calibration, multiclassBrier, multiclassLogLoss } from '../../src/stats/scores.ts';

// In thousandths, so that 1 - p loses no digits where the logarithm is steep.
const thousandth = fc.integer({ min: 0, max: 1000 }).map((k) => k / 1000);
const forecasts = fc.array(fc.tuple(thousandth, fc.constantFrom(0, 1)), {
  minLength: 1,
  maxLength: 40,
});
const split = (pairs: [number, number][]) => [pairs.map(([p]) => p), pairs.map(([, y]) => y)] as const;

const pairs = (p: readonly number[]) => p.map((yes) => [1 - yes, yes]);
/** Of a yes-or-no outcome: the classes are no and yes. */
const logLoss = (p: readonly number[], y: readonly number[]) => multiclassLogLoss(pairs(p), y);
/** Half of the sum over both outcomes, as it is used today. */
const brier = (p: readonly number[], y: readonly number[]) => multiclassBrier(pairs(p), y) / 2;

describe('log loss and Brier score', () => {
  it('agree with the scikit-learn documentation: log loss 0.21616, Brier 0.0375', () => {
    expect(logLoss([0.9, 0.1, 0.2, 0.65], [1, 0, 0, 1]).toFixed(5)).toBe('0.21616');
    expect(brier([0.1, 0.9, 0.8, 0.3], [0, 1, 1, 0])).toBeCloseTo(0.0375, 12); // from memory
  });

  it('of one half are ln 2 and 1/4, whatever comes', () => {
    expect(logLoss([0.5, 0.5, 0.5], [0, 1, 1])).toBeCloseTo(Math.LN2, 14);
    expect(brier([0.5, 0.5, 0.5], [0, 1, 1])).toBeCloseTo(0.25, 14);
  });

  it('mirror when yes and no swap, and do not mind the order', () => {
    fc.assert(
      fc.property(forecasts, (pairs) => {
        const [p, y] = split(pairs);
        const flipped = [p.map((x) => 1 - x), y.map((x) => 1 - x)] as const;
        expect(logLoss(...flipped)).toBeCloseTo(logLoss(p, y), 8);
        expect(brier(...flipped)).toBeCloseTo(brier(p, y), 10);
        expect(brier(p.toReversed(), y.toReversed())).toBeCloseTo(brier(p, y), 10);
      }),
    );
  });

  it('are best when the forecast is the share itself', () => {
    const y = [1, 1, 1, 0, 0, 0, 0, 0, 0, 0];
    const at = (p: number) =>
      logLoss(
        y.map(() => p),
        y,
      );
    expect(at(0.3)).toBeLessThan(at(0.29));
    expect(at(0.3)).toBeLessThan(at(0.31));
  });

  it('stay finite at a certain forecast that failed: 1e-15 is lost instead of 0', () => {
    expect(logLoss([0], [1])).toBeCloseTo(-Math.log(1e-15), 10);
    expect(multiclassLogLoss([[1, 0]], [1])).toBeCloseTo(-Math.log(1e-15), 10);
  });

  it.each([
    [[], []],
    [[0.5], [0, 1]],
    [[1.5], [1]],
    [[Number.NaN], [1]],
    [[0.5], [2]],
  ])('refuse %j for %j', (p, y) => {
    expect(() => logLoss(p, y)).toThrow(StatsInputError);
    expect(() => brier(p, y)).toThrow(StatsInputError);
    expect(() => calibration(p, y)).toThrow(StatsInputError);
  });

  it.each([
    [[[0.5, 0.6]], [0]],
    [[[0.5, 0.5]], [2]],
    [[[0.5, 0.5]], [0.5]],
  ])('over classes refuse %j for %j', (rows, y) => {
    expect(() => multiclassLogLoss(rows, y)).toThrow(StatsInputError);
    expect(() => multiclassBrier(rows, y)).toThrow(StatsInputError);
  });
});

describe('calibration', () => {
  /** Ten observations at each forecast, of which just the forecast share came true. */
  const honest = [0.1, 0.3, 0.5, 0.8].flatMap((p) => Array.from({ length: 10 }, (_, i) => [p, i < p * 10 ? 1 : 0]));
  const p = honest.map(([x]) => x!);
  const y = honest.map(([, x]) => x!);

  it('of honest forecasts is the ideal line: 0 and 1', () => {
    const got = calibration(p, y);
    expect(got.intercept).toBeCloseTo(0, 7);
    expect(got.slope).toBeCloseTo(1, 7);
    expect(got.inTheLarge).toBeCloseTo(0, 7);
  });

  it('takes as many forecasts as several seasons have', () => {
    const many = Array.from({ length: 200_000 }, (_, i) => i % p.length);
    const got = calibration(
      many.map((i) => p[i]!),
      many.map((i) => y[i]!),
    );
    expect(got.slope).toBeCloseTo(1, 6);
  });

  it('of forecasts with doubled logits has slope 1/2: too bold', () => {
    const bold = p.map((x) => x ** 2 / (x ** 2 + (1 - x) ** 2));
    expect(calibration(bold, y).slope).toBeCloseTo(0.5, 7);
  });

  it('of forecasts moved by one logit is moved back by one', () => {
    const low = p.map((x) => 1 / (1 + ((1 - x) / x) * Math.E));
    const got = calibration(low, y);
    expect(got.inTheLarge).toBeCloseTo(1, 7);
    expect(got.intercept).toBeCloseTo(1, 7);
  });

  it('has no slope when the forecasts are all one, but a shift', () => {
    const got = calibration([0.5, 0.5, 0.5, 0.5], [1, 1, 1, 0]);
    expect(got.slope).toBeNull();
    expect(got.intercept).toBeNull();
    expect(got.inTheLarge).toBeCloseTo(Math.log(3), 7);
  });

  it('has no slope when a cut parts the outcomes, and nothing when only one outcome came', () => {
    expect(calibration([0.2, 0.3, 0.7, 0.8], [0, 0, 1, 1]).slope).toBeNull();
    expect(calibration([0.2, 0.3, 0.7, 0.8], [1, 1, 0, 0]).slope).toBeNull();
    expect(calibration([0.2, 0.3], [1, 1])).toEqual({ intercept: null, slope: null, inTheLarge: null });
  });
});
