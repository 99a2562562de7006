import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { runsTest, runsTestFromCounts } from '../../src/stats/runs.ts';

const sequence = fc.array(fc.boolean(), { minLength: 0, maxLength: 14 });

/** Exact lower and upper p by listing every order of the same symbols. */
function byEnumeration(list: boolean[]): { lower: number; upper: number } {
  const runsIn = (bits: number) =>
    list.reduce((r, _, i) => (i > 0 && ((bits >> i) & 1) !== ((bits >> (i - 1)) & 1) ? r + 1 : r), 1);
  const ones = list.filter(Boolean).length;
  const observed = runsIn(list.reduce((bits, symbol, i) => (symbol ? bits | (1 << i) : bits), 0));
  let [all, few, many] = [0, 0, 0];
  for (let bits = 0; bits < 1 << list.length; bits += 1) {
    if (bits.toString(2).replaceAll('0', '').length !== ones) continue;
    all += 1;
    if (runsIn(bits) <= observed) few += 1;
    if (runsIn(bits) >= observed) many += 1;
  }
  return { lower: few / all, upper: many / all };
}

describe('runs test', () => {
  it('10 runs of 5 and 5 have an upper p of 2/252 (Swed and Eisenhart 1943; from memory)', () => {
    const got = runsTest([1, 0, 1, 0, 1, 0, 1, 0, 1, 0]);
    expect(got).toMatchObject({ n1: 5, n2: 5, runs: 10, mean: 6 });
    expect(got.exact?.upper).toBeCloseTo(2 / 252, 12);
    expect(got.exact?.lower).toBeCloseTo(1, 12);
    expect(got.exact?.twoSided).toBeCloseTo(4 / 252, 12);
  });

  it('39941409 runs of 39933862 and 39948082: mean 39940971, variance 19970484 (Cross Validated, question 37751)', () => {
    const got = runsTestFromCounts({ n1: 39933862, n2: 39948082, runs: 39941409 });
    expect(got.mean).toBeCloseTo(39940971.7343, 3);
    expect(got.variance).toBeCloseTo(19970484.4843, 3);
    expect(got.exact).toBeNull();
  });

  it('agrees with listing every order', () => {
    fc.assert(
      fc.property(sequence, (list) => {
        const { exact, n2 } = runsTest(list);
        fc.pre(n2 > 0);
        const { lower, upper } = byEnumeration(list);
        expect(exact?.lower).toBeCloseTo(lower, 9);
        expect(exact?.upper).toBeCloseTo(upper, 9);
      }),
      { numRuns: 40 },
    );
  });

  it('does not mind direction or names', () => {
    fc.assert(
      fc.property(sequence, (list) => {
        const { runs, z } = runsTest(list);
        const named = runsTest(list.toReversed().map((symbol) => (symbol ? 'strong' : 'weak')));
        expect(named.runs).toBe(runs);
        if (z === null) expect(named.z).toBeNull();
        else expect(named.z).toBeCloseTo(z, 12);
      }),
    );
  });

  it('is undefined with one symbol or none', () => {
    expect(runsTest([1, 1, 1])).toMatchObject({ n1: 3, n2: 0, runs: 1, z: null, pNormal: null, exact: null });
    expect(runsTest([])).toMatchObject({ n1: 0, n2: 0, runs: 0, z: null, exact: null });
  });

  it('of two symbols once each has no z, but an exact p', () => {
    const got = runsTest(['a', 'b']);
    expect([got.z, got.pNormal]).toEqual([null, null]);
    expect(got.exact?.twoSided).toBeCloseTo(1, 12);
  });

  it('refuses three symbols and runs that cannot be', () => {
    expect(() => runsTest([1, 2, 3])).toThrow('runsTest requires at most two symbols, got 3');
    expect(() => runsTestFromCounts({ n1: 2, n2: 2, runs: 5 })).toThrow(StatsInputError);
    expect(() => runsTestFromCounts({ n1: 2, n2: 2, runs: 1 })).toThrow('2 and 2 symbols cannot form 1 runs');
  });
});
