import { describe, expect, it } from 'vitest';
import { runCheck } from './adapters.ts';
import { type Check, deviations } from './check.ts';
import { PUBLISHED_CHECKS } from './published-checks.ts';

describe('published figures', () => {
  it.each(PUBLISHED_CHECKS.map((check) => [check.method, check.source, check] as const))(
    '%s: %s',
    (_method, _source, check) => {
      expect(runCheck(check)).toEqual({ kind: 'passed' });
    },
  );

  it('run at least 20 methods', () => {
    expect(new Set(PUBLISHED_CHECKS.map((check) => check.method)).size).toBeGreaterThanOrEqual(20);
  });
});

describe('the judge of a check', () => {
  const check = (expected: Record<string, unknown>, tolerance = 1e-6): Check => ({
    method: 'none',
    input: { x: [0, 0], n: [4, 6] },
    expected,
    tolerance,
    source: 'constructed',
  });

  it.each([
    { expected: { a: 1 }, got: { a: 1 + 2e-6 } },
    { expected: { a: 1 }, got: {} },
    { expected: { a: null }, got: { a: 0 } },
    { expected: { a: 1 }, got: { a: Number.NaN } },
    { expected: { a: [1, 2] }, got: { a: [1] } },
    { expected: { a: [[1], [2]] }, got: { a: [[1], [2.1]] } },
    { expected: { a: true }, got: { a: false } },
    { expected: { M_at_least: 10 }, got: { alpha: 4, beta: 5 } },
    { expected: { finite: true }, got: { alpha: Number.POSITIVE_INFINITY } },
    { expected: { posterior_mean_max: 0.1 }, got: { alpha: 1, beta: 1 } },
    { expected: { posterior_mean_max: 0.1 }, got: { alpha: 0, beta: 1 } },
  ])('finds fault with $got where $expected is asked for', ({ expected, got }) => {
    expect(deviations(check(expected), got)).toHaveLength(1);
  });

  it.each([
    { expected: { a: 1e6 }, got: { a: 1e6 + 0.5 } }, // the tolerance grows with the figure
    { expected: { a: null }, got: {} },
    { expected: { a: [1, null] }, got: { a: [1 + 5e-7, null] } },
    { expected: { M_at_least: 10, check: 'text only' }, got: { alpha: 5, beta: 5 } },
    { expected: { posterior_mean_max: 0.1, finite: true }, got: { alpha: 0.1, beta: 9 } },
  ])('accepts $got where $expected is asked for', ({ expected, got }) => {
    expect(deviations(check(expected), got)).toEqual([]);
  });

  it('names a method it cannot run, and takes an error for a failure', () => {
    expect(runCheck(check({}))).toEqual({ kind: 'no-adapter' });
    const wrong = { ...check({ lower: 0 }), method: 'binom.wilson', input: { x: 5, n: 4, conf: 0.95 } };
    expect(runCheck(wrong)).toMatchObject({ kind: 'failed' });
  });
});
