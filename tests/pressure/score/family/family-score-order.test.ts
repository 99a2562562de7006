import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ANSWERS, FAMILIES } from '../../../../src/game/vocabulary.ts';
import { CELL_COUNT, cellIndex } from '../../../../src/pressure/evidence/evidence-cell.ts';
import { inTierOrder, inTradeOrder } from '../../../../src/pressure/score/family/family-score-order.ts';

const number = fc.double({ min: -2, max: 2, noNaN: true });
const weight = fc.double({ min: 0.5, max: 40, noNaN: true });
const item = fc.record({ value: number, weight, tier: fc.integer({ min: 0, max: 2 }) });
const items = fc.array(item, { minLength: 1, maxLength: 7 });
type Item = { value: number; weight: number; tier: number };
const ordered = (given: readonly Item[]) =>
  inTierOrder(
    given.map(({ value }) => value),
    given.map((entry) => entry.weight),
    given.map(({ tier }) => tier),
  );
const loss = (given: readonly Item[], fit: ArrayLike<number>) =>
  given.reduce((sum, { value, weight: w }, i) => sum + w * (value - (fit[i] ?? 0)) ** 2, 0);

describe('values put in tier order', () => {
  it.each([
    // Worked by hand: pool adjacent violators on one item a tier.
    {
      values: [4, 5, 1, 6, 8, 7],
      weights: [1, 1, 1, 1, 1, 1],
      tiers: [0, 1, 2, 3, 4, 5],
      result: [10 / 3, 10 / 3, 10 / 3, 6, 7.5, 7.5],
    },
    { values: [3, 1], weights: [3, 1], tiers: [0, 1], result: [2.5, 2.5] },
    { values: [3, 1, 2], weights: [1, 1, 1], tiers: [0, 0, 1], result: [2.5, 1, 2.5] },
    { values: [1, 2, 3], weights: [1, 1, 1], tiers: [0, 1, 2], result: [1, 2, 3] },
  ])('$values in tiers $tiers become $result', ({ values, weights, tiers, result }) => {
    expect(Array.from(inTierOrder(values, weights, tiers))).toEqual(result.map((value) => expect.closeTo(value, 12)));
  });

  it('never leave a lower tier above a higher one, and keep the weighted mean', () => {
    fc.assert(
      fc.property(items, (given) => {
        const fit = ordered(given);
        given.forEach(({ tier }, i) => {
          given.forEach((other, j) => {
            if (tier < other.tier) expect(fit[i]).toBeLessThanOrEqual((fit[j] ?? 0) + 1e-9);
          });
        });
        const total = (values: ArrayLike<number>) =>
          given.reduce((sum, entry, i) => sum + entry.weight * (values[i] ?? 0), 0);
        expect(total(fit)).toBeCloseTo(total(given.map(({ value }) => value)), 6);
      }),
    );
  });

  it('are nearer to the given ones than any other values in that order', () => {
    fc.assert(
      fc.property(items, items, (given, other) => {
        const rival = ordered(given.map((entry, i) => ({ ...entry, value: other[i % other.length]?.value ?? 0 })));
        expect(loss(given, ordered(given))).toBeLessThanOrEqual(loss(given, rival) + 1e-9);
      }),
    );
  });

  it('never fall when a given value rises', () => {
    fc.assert(
      fc.property(items, fc.nat(6), fc.double({ min: 0, max: 1, noNaN: true }), (given, at, rise) => {
        const raised = given.map((entry, i) =>
          i === at % given.length ? { ...entry, value: entry.value + rise } : entry,
        );
        const [before, after] = [ordered(given), ordered(raised)];
        before.forEach((value, i) => {
          expect(after[i]).toBeGreaterThanOrEqual(value - 1e-9);
        });
      }),
    );
  });
});

describe('cells in the order the trade is sure of', () => {
  const cells = fc
    .array(number, { minLength: CELL_COUNT, maxLength: CELL_COUNT })
    .map((values) => Float64Array.from(values));
  const worths = fc
    .array(weight, { minLength: CELL_COUNT, maxLength: CELL_COUNT })
    .map((values) => Float64Array.from(values));
  const place = (family: (typeof FAMILIES)[number], answer: (typeof ANSWERS)[number]) =>
    cellIndex(FAMILIES.indexOf(family), ANSWERS.indexOf(answer));

  it('have the add-on worst against screens and quick game and best against the held ball', () => {
    fc.assert(
      fc.property(cells, worths, (saved, worth) => {
        const put = inTradeOrder(saved, worth);
        const at = (answer: (typeof ANSWERS)[number]) => put[place('add_on', answer)] ?? 0;
        const middle = [at('run'), at('quarterback_run'), at('movement')];
        expect(Math.max(at('screen'), at('quick'))).toBeLessThanOrEqual(Math.min(...middle) + 1e-9);
        expect(Math.max(...middle)).toBeLessThanOrEqual(Math.min(at('dropback'), at('deep_shot')) + 1e-9);
      }),
    );
  });

  it('have zero and man-free behind the spy by most against a quarterback run', () => {
    fc.assert(
      fc.property(cells, fc.constantFrom('zero' as const, 'man_free' as const), (saved, family) => {
        const put = inTradeOrder(saved, new Float64Array(CELL_COUNT).fill(1));
        const leads = ANSWERS.map(
          (answer) => (put[place(family, answer)] ?? 0) - (put[place('peel_spy', answer)] ?? 0),
        );
        expect(leads[ANSWERS.indexOf('quarterback_run')]).toBeLessThanOrEqual(Math.min(...leads) + 1e-9);
      }),
    );
  });

  it('leave the other families as they are', () => {
    fc.assert(
      fc.property(cells, worths, (saved, worth) => {
        const put = inTradeOrder(saved, worth);
        for (const family of ['base', 'three_under', 'four_under', 'hot', 'peel', 'peel_spy'] as const) {
          for (const answer of ANSWERS) expect(put[place(family, answer)]).toBe(saved[place(family, answer)]);
        }
      }),
    );
  });
});
