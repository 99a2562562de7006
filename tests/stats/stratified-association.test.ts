import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { createRandom } from '../../src/stats/random.ts';
import { stratifiedAssociation } from '../../src/stats/stratified-association.ts';

const zeros = (size: number) => new Array<number>(size).fill(0);
const repeated = (value: number, times: number) => new Array<number>(times).fill(value);

describe('stratifiedAssociation', () => {
  it("counts all orders of Fisher's tea cups: 3 of 4 right is no more than chance", () => {
    // Source: Fisher 1935, The Design of Experiments, ch. 2: 3 or more of 4 right either way has probability 34 / 70.
    const [found] = stratifiedAssociation({
      outcome: [1, 1, 1, 0, 1, 0, 0, 0],
      strata: zeros(8),
      groupings: [[0, 0, 0, 0, 1, 1, 1, 1]],
      permutations: 9999,
      seed: 1,
    });
    expect(Math.abs(found!.p - 34 / 70)).toBeLessThan(0.02);
    expect(found!.expected).toEqual([2, 2]);
  });

  it('sees nothing in a grouping that only follows the strata', () => {
    // Berkeley admissions have this shape: the groups differ overall and are alike in each department (constructed).
    const outcome = [...repeated(1, 40), ...repeated(0, 10), ...repeated(1, 10), ...repeated(0, 40)];
    const strata = [...repeated(0, 50), ...repeated(1, 50)];
    const group = [32, 8, 8, 2, 2, 8, 8, 32].flatMap((times, i) => repeated(i % 2, times));
    const [within] = stratifiedAssociation({ outcome, strata, groupings: [group], seed: 2 });
    const [overall] = stratifiedAssociation({ outcome, strata: zeros(100), groupings: [group], seed: 2 });
    expect(within!.p).toBeGreaterThan(0.5);
    expect(overall!.p).toBeLessThan(0.05);
  });

  it('calls one in twenty groupings that were shuffled, and knows the one that was not', () => {
    const random = createRandom('shuffled');
    const outcome = Array.from({ length: 120 }, () => random.integer(2));
    const strata = Array.from({ length: 120 }, () => random.integer(4));
    const groupings = Array.from({ length: 100 }, () => Array.from({ length: 120 }, () => random.integer(5) - 1));
    const found = stratifiedAssociation({
      outcome,
      strata,
      groupings: [...groupings, outcome],
      permutations: 499,
      seed: 3,
    });
    expect(found.slice(0, 100).filter(({ p }) => p <= 0.05).length).toBeLessThanOrEqual(12);
    expect(found[100]?.p).toBe(1 / 500);
  });

  it('does not depend on the numbers of groups and strata', () => {
    const task = { outcome: [1, 0, 1, 1, 0, 0], strata: [0, 0, 0, 1, 1, 1], groupings: [[0, 1, 0, 1, -1, 0]], seed: 4 };
    const renumbered = { ...task, strata: task.strata.map((s) => 7 - s), groupings: [[2, 0, 2, 0, -1, 2]] };
    const [a, b] = [stratifiedAssociation(task)[0]!, stratifiedAssociation(renumbered)[0]!];
    expect(b.statistic).toBeCloseTo(a.statistic, 12);
    expect(b.p).toBe(a.p);
  });

  it('has p 1 without observations, refuses lengths that differ and outcomes that are no yes or no', () => {
    expect(() => stratifiedAssociation({ outcome: [2], strata: [0], groupings: [], seed: 1 })).toThrow(StatsInputError);
    expect(stratifiedAssociation({ outcome: [], strata: [], groupings: [[]], seed: 1 })[0]?.p).toBe(1);
    expect(() => stratifiedAssociation({ outcome: [1], strata: [], groupings: [], seed: 1 })).toThrow(StatsInputError);
  });
});
