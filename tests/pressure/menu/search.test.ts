import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ceilingOf, type MenuMultipliers, setCeiling } from '../../../src/pressure/menu/ceiling.ts';
import { chooseMenu } from '../../../src/pressure/menu/choice.ts';
import { compileMenu } from '../../../src/pressure/menu/compile.ts';
import { firstSet } from '../../../src/pressure/menu/first.ts';
import { bestMix } from '../../../src/pressure/menu/mix.ts';
import type { MenuProblem } from '../../../src/pressure/menu/model.ts';
import { multipliersOf } from '../../../src/pressure/menu/multipliers.ts';
import { trimNode } from '../../../src/pressure/menu/node.ts';
import { nodeCeiling, nodeScratch } from '../../../src/pressure/menu/node-ceiling.ts';
import { priceOutside } from '../../../src/pressure/menu/outside.ts';
import { isCarriable } from '../../../src/pressure/menu/set.ts';
import { createRandom } from '../../../src/stats/random.ts';
import { mixedElsewhere } from './elsewhere.ts';
import { inputOf, inventedWeek, type TestWeek } from './invented-menu-week.ts';

const problemOf = (seed: number, count: number, menu: TestWeek['menu'] = {}): MenuProblem =>
  compileMenu(inputOf(inventedWeek(seed, count, { reps: 300, size: 8, ...menu }))).problem;

const setsOf = (problem: MenuProblem) =>
  Array.from({ length: 2 ** problem.candidates.length }, (_, word) =>
    problem.candidates.map((__, c) => c).filter((c) => word & (1 << c)),
  );

/** Any prices at all: answers' weights that sum to one, the rest at least 0. */
function anyPrices(problem: MenuProblem, seed: number): MenuMultipliers {
  const random = createRandom(`prices ${seed}`);
  const weights = problem.situations.flatMap(() => [...random.dirichlet(new Array(problem.answers).fill(0.5))]);
  const some = (length: number, size: number) => Float64Array.from({ length }, () => size * random.uniform());
  return {
    answers: Float64Array.from(weights),
    pairs: some(problem.candidates.length, 0.2),
    use: some(problem.candidates.length, 0.2),
    explosives: problem.limits.explosives === null ? 0 : random.uniform(),
  };
}

const kinds = [{}, { pairing_cap: 1 }, { pressure_rate: { least: 0.3, most: 0.6 } }, { explosives: 4.4 }];

describe('ceilings', () => {
  it('no prices put a ceiling below what a set is worth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), fc.constantFrom(...kinds), (seed, menu) => {
        const problem = problemOf(seed, 8, menu);
        const ceiling = ceilingOf(problem, anyPrices(problem, seed));
        for (const set of setsOf(problem)
          .filter((each) => isCarriable(problem, each))
          .slice(0, 6)) {
          const mix = bestMix(problem, set);
          if (mix) expect(setCeiling(ceiling, set)).toBeGreaterThanOrEqual(mix.objective - 1e-7);
        }
      }),
      { numRuns: 25, seed: 1 },
    );
  });

  it("a set's own prices put its ceiling at its worth, which a second solver finds too", () => {
    let compared = 0;
    const problems = [1, 2, 3, 4, 5, 6].flatMap((seed) => kinds.map((menu) => problemOf(seed, 9, menu)));
    for (const problem of problems) {
      const set = firstSet(problem) ?? [];
      const mix = bestMix(problem, set);
      if (mix === null) continue;
      compared++;
      const ceiling = ceilingOf(problem, priceOutside(problem, set, multipliersOf(problem, set)!));
      expect(setCeiling(ceiling, set)).toBeCloseTo(mix.objective, 5);
      expect(mixedElsewhere(problem, set)).toBeCloseTo(mix.objective, 5);
    }
    expect(compared).toBeGreaterThan(15);
  });

  it('a part of the search has no ceiling below that of a set in it, and trimming drops no set that can be carried', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), fc.constantFrom(...kinds), (seed, menu) => {
        const problem = problemOf(seed, 9, { reps: 90, size: 6, ...menu });
        const random = createRandom(`part ${seed}`);
        const draw = problem.candidates.map(() => random.uniform());
        const chosen = problem.candidates.map((_, c) => c).filter((c) => draw[c]! < 0.2);
        const free = problem.candidates.map((_, c) => c).filter((c) => draw[c]! > 0.35);
        const inside = setsOf(problem).filter(
          (set) =>
            chosen.every((c) => set.includes(c)) &&
            set.every((c) => chosen.includes(c) || free.includes(c)) &&
            isCarriable(problem, set),
        );
        const trimmed = trimNode(problem, { chosen, free });
        if (trimmed === null) {
          expect(inside).toEqual([]);
          return;
        }
        const ceiling = ceilingOf(problem, anyPrices(problem, seed));
        const bound = nodeCeiling(nodeScratch(problem), ceiling, { ...trimmed, enough: Number.NEGATIVE_INFINITY });
        for (const set of inside) {
          expect(set.every((c) => chosen.includes(c) || trimmed.node.free.includes(c))).toBe(true);
          expect(bound).toBeGreaterThanOrEqual(setCeiling(ceiling, set) - 1e-9);
        }
      }),
      { numRuns: 30, seed: 2 },
    );
  });
});

describe('chooseMenu', () => {
  it('says how much better an unseen menu could be when it is stopped early, and that bound holds', () => {
    for (const seed of [1, 2, 3]) {
      const problem = problemOf(seed, 18, { reps: 120 });
      const whole = chooseMenu({ problem, wanted: 1, mostParts: 100_000 });
      const cut = chooseMenu({ problem, wanted: 1, mostParts: 3 });
      expect(whole?.end.finished).toBe(true);
      expect(cut!.end.ceiling).toBeGreaterThanOrEqual(whole!.book.best[0]!.objective - 1e-6);
      expect(cut!.book.best[0]!.objective).toBeLessThanOrEqual(whole!.book.best[0]!.objective + 1e-6);
    }
  });

  it('has no answer when nothing can be carried, and the empty menu when nothing is demanded or worth it', () => {
    expect(chooseMenu({ problem: problemOf(1, 8, { size: 1 }), wanted: 1, mostParts: 100 })).toBeNull();
    const week: TestWeek = {
      calls: [{ name: 'only', path: 'p', family: 'hot', coverage: 'c' }],
      snaps: { first: 30 },
      worth: () => -2,
      menu: { pairing_cap: 1 },
    };
    const { problem } = compileMenu(inputOf(week), [{ kind: 'theory', of: '3', words: 'hot or zero' }]);
    expect(chooseMenu({ problem, wanted: 1, mostParts: 100 })?.book.best[0]?.set).toEqual([]);
  });
});
