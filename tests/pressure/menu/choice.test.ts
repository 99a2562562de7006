import { describe, expect, it } from 'vitest';
import { chooseMenu, chooseSet } from '../../../src/pressure/menu/choice.ts';
import { compileMenu } from '../../../src/pressure/menu/compile.ts';
import { bestMix } from '../../../src/pressure/menu/mix.ts';
import type { MenuProblem } from '../../../src/pressure/menu/model.ts';
import { createRandom } from '../../../src/stats/random.ts';
import { inputOf, inventedWeek, type TestWeek } from './invented-menu-week.ts';

const kinds: TestWeek['menu'][] = [{}, { pairing_cap: 1 }, { pressure_rate: { least: 0.3, most: 0.6 } }];

const problemOf = (seed: number, menu: TestWeek['menu']): MenuProblem =>
  compileMenu(inputOf(inventedWeek(seed, 12, { reps: 110, size: 6, ...menu }))).problem;

/** The problem with every score moved, by the same points against every answer. */
function moved(problem: MenuProblem, seed: number): MenuProblem {
  const random = createRandom(`moved ${seed}`);
  const by = problem.value.map(() => 0.15 * random.normal());
  return {
    ...problem,
    value: problem.value.map((worth, at) => worth + by[at]!),
    byAnswer: problem.byAnswer.map((worth, i) => worth + by[Math.floor(i / problem.answers)]!),
  };
}

describe('a menu chosen anew from what is known of another problem', () => {
  it('is worth what a search from nothing proves, whatever was known', () => {
    let others = 0;
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const before = problemOf(seed, kinds[seed % kinds.length]);
      const known = chooseMenu({ problem: before, wanted: 2, mostParts: 50_000 });
      const after = moved(before, seed);
      const scratch = chooseMenu({ problem: after, wanted: 1, mostParts: 50_000 });
      const again = known && chooseSet(after, known.book, 50_000);
      expect(scratch?.end.finished).toBe(true);
      expect(again?.end.finished).toBe(true);
      const [proved, found] = [scratch?.book.best[0], again?.book.best[0]];
      expect(found?.objective).toBeCloseTo(proved?.objective ?? Number.NaN, 5);
      expect(bestMix(after, found?.set ?? [])?.objective).toBeCloseTo(proved?.objective ?? Number.NaN, 5);
      if (String(found?.set) !== String(known?.book.best[0]?.set)) others++;
    }
    expect(others).toBeGreaterThan(2);
  });
});
