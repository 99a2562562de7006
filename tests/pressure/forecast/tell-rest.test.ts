import { describe, expect, it } from 'vitest';
import { expectedBeside, tellTotals } from '../../../src/pressure/forecast/tell-rest.ts';
import { testCell } from '../../../src/pressure/forecast/tell-test.ts';
import { snapSet } from '../../../src/pressure/snap/snap-set.ts';

describe('expectedBeside', () => {
  it('keeps an expectation that the other snaps bear out, and the one of a film that is all cell', () => {
    const cell = { count: 34, sum: 22, trials: 37 };
    expect(expectedBeside(cell, { count: 50, sum: 50, trials: 100 })).toBeCloseTo(22 / 37, 12);
    expect(expectedBeside(cell, { count: 0, sum: 0, trials: 0 })).toBeCloseTo(22 / 37, 12);
  });

  it('takes back what the cell taught the rest: close to the logistic regression with an offset, solved by bisection', () => {
    const cell = { count: 34, sum: 22.2, trials: 37 };
    const rest = { count: 5200, sum: 6000, trials: 10_000 };
    let [low, high] = [-3, 3];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      const odds = 1.5 * Math.exp(middle);
      if ((odds / (1 + odds)) * rest.trials < rest.count) low = middle;
      else high = middle;
    }
    const exact = 1.5 * Math.exp(low);
    expect(Math.abs(expectedBeside(cell, rest) - exact / (1 + exact))).toBeLessThan(0.005);
  });
});

describe('testCell beside the rest', () => {
  // 34 of 37 in the cell, 50 of 100 outside; every snap was expected at one half.
  const codes = Uint8Array.from({ length: 137 }, (_, i) => (i < 34 || (i >= 37 && i < 87) ? 0 : 1));
  const expected = { classes: 2, shares: new Float64Array(274).fill(0.5) };
  const cell = snapSet(137, (i) => i < 37);

  it('is about as sure as the exact test of two shares, and never as sure as if the rest were known for good', () => {
    const beside = testCell({ codes, expected, totals: tellTotals(codes, expected) }, cell)[0]!;
    const alone = testCell({ codes, expected }, cell)[0]!;
    expect(beside).toMatchObject({ count: 34, trials: 37, expected: 0.5 });
    expect(alone.p).toBeCloseTo((7770 + 666 + 37 + 1) / 2 ** 37, 14);
    const fisher = hypergeometricTail({ drawn: 37, marked: 84, all: 137 }, 34);
    expect(beside.p / fisher).toBeGreaterThan(0.5);
    expect(beside.p / fisher).toBeLessThan(2);
  });

  it('finds nothing in a cell that is all of the film', () => {
    const every = snapSet(137, () => true);
    const lucky = new Uint8Array(137);
    for (const test of testCell({ codes: lucky, expected, totals: tellTotals(lucky, expected) }, every)) {
      expect(test).toMatchObject({ p: 1, leastLog: 0 });
    }
  });

  it('says the smallest chance that so many snaps could have', () => {
    const all = codes.map((code, i) => (i < 20 ? 0 : i < 37 ? 255 : code));
    const totals = tellTotals(all, expected);
    const whole = testCell(
      { codes: all, expected, totals },
      snapSet(137, (i) => i < 20),
    )[0]!;
    expect(Math.exp(whole.leastLog) / whole.p).toBeCloseTo(1, 9);
  });
});

/** Chance of `least` marked ones or more among those drawn, term by term. */
function hypergeometricTail({ drawn, marked, all }: { drawn: number; marked: number; all: number }, least: number) {
  const logChoose = (n: number, k: number) => {
    let sum = 0;
    for (let i = 1; i <= k; i++) sum += Math.log((n - k + i) / i);
    return sum;
  };
  let tail = 0;
  for (let k = least; k <= Math.min(drawn, marked); k++) {
    tail += Math.exp(logChoose(marked, k) + logChoose(all - marked, drawn - k) - logChoose(all, drawn));
  }
  return tail;
}
