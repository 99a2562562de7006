import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ANSWERS } from '../../../src/game/vocabulary.ts';
import type { PathHabit } from '../../../src/pressure/menu/habits.ts';
import type { MenuInput } from '../../../src/pressure/menu/input.ts';
import { planMenu } from '../../../src/pressure/menu/menu.ts';
import { THEORIES } from '../../../src/pressure/menu/theory.ts';
import { bestByEnumeration } from './elsewhere.ts';
import { inputOf, inventedWeek, menuOf, type TestCall, type TestWeek } from './invented-menu-week.ts';

/** A game against their best answer alone: each row is a call, each column one of their answers. */
function gameWeek(payoff: readonly (readonly number[])[]): TestWeek {
  const calls = payoff.map((_, i): TestCall => ({ name: `row ${i}`, path: `p${i}`, family: 'hot', coverage: `c${i}` }));
  const column = (answer: string) => Math.min(ANSWERS.indexOf(answer as never), payoff[0]!.length - 1);
  return {
    calls,
    snaps: { only: 10_000 },
    worth: (call, _, answer) => payoff[Number(call.slice(4))]![column(answer)]!,
    menu: { trust: 0, pairing_cap: 1, reps: 1000, size: payoff.length, pressure_rate: { least: 1, most: 1 } },
  };
}

/** A knapsack: every item is a call that is worth something on its own ten snaps only, its weight is its repetitions. */
function knapsackWeek(values: readonly number[], weights: readonly number[], capacity: number): TestWeek {
  return {
    calls: values.map((_, i) => ({
      name: `item ${i}`,
      path: `p${i}`,
      family: 'hot',
      coverage: `c${i}`,
      reps: weights[i]!,
    })),
    snaps: Object.fromEntries(values.map((_, i) => [`s${i}`, 10])),
    worth: (call, situation) => (call.slice(5) === situation.slice(1) ? values[Number(call.slice(5))]! : -1000),
    menu: { trust: 1, pairing_cap: 1, reps: capacity, size: values.length },
  };
}

describe('published examples', () => {
  it.each([
    {
      name: 'run or pass',
      payoff: [
        [-5, 5],
        [10, 0],
      ],
      value: 2.5,
      source: 'Winston, Mathletics (from memory)',
    },
    {
      name: 'odd or even',
      payoff: [
        [-2, 3],
        [3, -4],
      ],
      value: 1 / 12,
      source: 'Ferguson, Game Theory, part II, 1.2',
    },
    {
      name: 'rock, paper, scissors',
      payoff: [
        [0, -1, 1],
        [1, 0, -1],
        [-1, 1, 0],
      ],
      value: 0,
      source: 'common knowledge',
    },
    {
      name: 'Colonel Blotto, four against three',
      payoff: [
        [4, 0, 2, 1],
        [0, 4, 1, 2],
        [1, -1, 3, 0],
        [-1, 1, 0, 3],
        [-2, -2, 2, 2],
      ],
      value: 14 / 9,
      source: 'Ferguson, Game Theory, part II (from memory)',
    },
    {
      name: 'saddle point',
      payoff: [
        [4, 1, -3],
        [3, 2, 5],
        [0, 1, 6],
      ],
      value: 2,
      source: 'constructed: row 2, column 2',
    },
  ])('a trust of 0 plays the matrix game: $name', ({ payoff, value }) => {
    const menu = menuOf(inputOf(gameWeek(payoff)));
    // Points per ten snaps over 10,000 snaps; one forced call a game moves the mean by at most 9 points in 10,000 snaps.
    expect(menu.worstValue / 1000).toBeCloseTo(value, 2);
    expect(menu.worstValue / 1000).toBeLessThanOrEqual(value + 1e-9);
  });

  it.each([
    {
      values: [92, 57, 49, 68, 60, 43, 67, 84, 87, 72],
      weights: [23, 31, 29, 44, 53, 38, 63, 85, 89, 82],
      capacity: 165,
      best: 309,
      source: 'Burkardt, KNAPSACK_01, P01',
    },
    {
      values: [24, 13, 23, 15, 16],
      weights: [12, 7, 11, 8, 9],
      capacity: 26,
      best: 51,
      source: 'Burkardt, KNAPSACK_01, P02',
    },
    {
      values: [442, 525, 511, 593, 546, 564, 617],
      weights: [41, 50, 49, 59, 55, 57, 60],
      capacity: 170,
      best: 1735,
      source: 'Burkardt, KNAPSACK_01, P06',
    },
  ])('a trust of 1 with nothing shared is a knapsack: $source', ({ values, weights, capacity, best }) => {
    const menu = menuOf(inputOf(knapsackWeek(values, weights, capacity)));
    expect(menu.value).toBeCloseTo(best, 6);
    expect(menu.reps).toBeLessThanOrEqual(capacity);
    expect(menu.proof?.finished).toBe(true);
  });
});

/** Film that shows every path often enough to be read, so that each call of it counts. */
function oftenOnFilm({ library }: MenuInput): PathHabit[] {
  return [...new Set(library.calls.map(({ path }) => path))].map((path) => ({ path, snaps: 20, limits: [] }));
}

/** A film that wants the first coverage of a path on no more than this share of its calls. */
function leastOf({ library }: MenuInput, path: string, most: number) {
  return { coverage: library.calls.find((call) => call.path === path)!.coverage, most };
}

describe('the best menu', () => {
  it.each([
    { title: 'the usual limits', menu: {} },
    { title: 'no pairing cap', menu: { pairing_cap: 1 } },
    { title: 'trust in the forecast alone', menu: { trust: 1 } },
    { title: 'their best answer alone', menu: { trust: 0 } },
    { title: 'least and most pressure', menu: { pressure_rate: { least: 0.35, most: 0.6 } } },
    { title: 'few repetitions', menu: { reps: 60 } },
    { title: 'a cap on explosives', menu: { explosives: 4.1 } },
  ])('is the one a second solver finds by trying every set: $title', ({ menu }) => {
    const weeks = [1, 2, 3].map((seed) => inputOf(inventedWeek(seed, 9, menu)));
    const expected = weeks.map(bestByEnumeration);
    expect(expected.some((best) => best !== null)).toBe(true);
    for (const [i, input] of weeks.entries()) {
      const found = planMenu(input);
      const best = expected[i]!;
      if (best === null) expect(found.kind).toBe('infeasible');
      else expect(found.kind === 'menu' ? found.planValue : null).toBeCloseTo(best, 5);
    }
  });

  it('is that one too when our film shows some paths often and asks for less of a coverage', () => {
    for (const seed of [1, 2, 3]) {
      const input = inputOf(inventedWeek(seed, 9));
      const often = oftenOnFilm(input).slice(0, 3);
      const habits = often.map((habit) => ({ ...habit, limits: [leastOf(input, habit.path, 0.35)] }));
      const film = { ...input, habits };
      expect(menuOf(film).planValue).toBeCloseTo(bestByEnumeration(film)!, 5);
      expect(menuOf(film).planValue!).toBeLessThanOrEqual(menuOf(input).planValue! + 1e-6);
    }
  });

  it('is that one too when the cap needs three coverages a path', () => {
    const week = inventedWeek(12, 9, { pairing_cap: 0.45, size: 7, reps: 400 });
    const input = inputOf({ ...week, calls: week.calls.map((call, i) => ({ ...call, path: `p${i % 3}` })) });
    expect(menuOf(input).planValue).toBeCloseTo(bestByEnumeration(input)!, 5);
  });

  it('keeps every limit it was given, and mixes to exactly one with the base', () => {
    const rate = { least: 0.3, most: 0.7 };
    const input = inputOf(inventedWeek(4, 16, { size: 7, reps: 130, pairing_cap: 0.65, pressure_rate: rate }));
    const menu = menuOf({ ...input, habits: oftenOnFilm(input) });
    for (const { families } of THEORIES)
      expect(menu.calls.some(({ family }) => families.includes(family as never))).toBe(true);
    expect(menu.calls.length).toBeLessThanOrEqual(7);
    expect(menu.reps).toBeLessThanOrEqual(130);
    expect(menu.calls.reduce((sum, { reps }) => sum + reps, 0)).toBe(menu.reps);
    for (const { share } of menu.pairings) expect(share).toBeLessThanOrEqual(0.65 + 1e-6);
    for (const { expectedCalls } of menu.calls) expect(expectedCalls).toBeGreaterThanOrEqual(1 - 1e-6);
    for (const { id, baseShare } of menu.situations) {
      const sent = menu.calls.reduce(
        (sum, { mix }) => sum + (mix.find(({ situation }) => situation === id)?.share ?? 0),
        0,
      );
      expect(sent + baseShare).toBeCloseTo(1, 5);
      expect(sent).toBeGreaterThanOrEqual(rate.least - 1e-6);
      expect(sent).toBeLessThanOrEqual(rate.most + 1e-6);
    }
  });

  it('is never better than the plan value it states, and the next-best is another set of no more value', () => {
    const menu = menuOf(inputOf(inventedWeek(5, 14)));
    expect(menu.planValue).toBeCloseTo(0.7 * menu.value + 0.3 * menu.worstValue, 9);
    expect(menu.nextBest.planValue!).toBeLessThanOrEqual(menu.planValue! + 1e-9);
    expect(menu.nextBest.difference).toMatch(/instead of|as well|without/);
  });
});

describe('properties', () => {
  const anyWeek = fc.record({ seed: fc.integer({ min: 1, max: 400 }), count: fc.integer({ min: 8, max: 12 }) });
  const planValue = (week: TestWeek) => {
    const result = planMenu(inputOf(week));
    return result.kind === 'menu' ? result.planValue! : Number.NEGATIVE_INFINITY;
  };
  const withMenu = (week: TestWeek, menu: TestWeek['menu']): TestWeek => ({ ...week, menu: { ...week.menu, ...menu } });

  it('more calls or repetitions never lower the value, a tighter pairing cap never raises it', () => {
    fc.assert(
      fc.property(anyWeek, ({ seed, count }) => {
        const week = inventedWeek(seed, count, { reps: 80, size: 5 });
        const now = planValue(week);
        expect(planValue(withMenu(week, { size: 6 }))).toBeGreaterThanOrEqual(now - 1e-6);
        expect(planValue(withMenu(week, { reps: 95 }))).toBeGreaterThanOrEqual(now - 1e-6);
        expect(planValue(withMenu(week, { pairing_cap: 0.6 }))).toBeLessThanOrEqual(now + 1e-6);
      }),
      { numRuns: 5, seed: 3 },
    );
  });

  it('names and order of the calls do not matter, nor does a twin of a call', () => {
    fc.assert(
      fc.property(anyWeek, ({ seed, count }) => {
        const week = inventedWeek(seed, count);
        const now = planValue(week);
        const renamed = (name: string) => `other ${name}`;
        const original = (name: string) => name.replace(/^other |^twin /, '');
        const worth: TestWeek['worth'] = (call, situation, answer) => week.worth(original(call), situation, answer);
        const explosives = (call: string) => week.explosives!(original(call));
        const calls = week.calls.map((call) => ({ ...call, name: renamed(call.name) })).reverse();
        expect(planValue({ ...week, calls, worth, explosives })).toBeCloseTo(now, 5);
        const twin = { ...week.calls[seed % count]!, name: `twin ${week.calls[seed % count]!.name}` };
        expect(planValue({ ...week, calls: [...week.calls, twin], worth, explosives })).toBeCloseTo(now, 5);
      }),
      { numRuns: 4, seed: 5 },
    );
  });
});

describe('a path with one coverage in the library', () => {
  const week = inventedWeek(2, 12, { reps: 1000, size: 10 });
  const lone: TestCall = { name: 'Lone', path: 'lone', family: 'hot', coverage: 'any' };
  const worth: TestWeek['worth'] = (call, situation, answer) =>
    call === 'Lone' ? 30 : week.worth(call, situation, answer);
  const input = inputOf({ ...week, calls: [...week.calls, lone], worth });

  it('may be called as seldom as four games of it give nothing away, and no more', () => {
    // 0.7 to the ninth is .040, to the eighth .058: eight snaps in four games cannot be told from a path that keeps 70%.
    const menu = menuOf(input);
    expect(menu.calls.find(({ call }) => call === 'Lone')?.expectedCalls).toBeCloseTo(2, 5);
    expect(menu.pairings.find(({ path }) => path === 'lone')).toMatchObject({
      coverage: 'any',
      share: 1,
      uncounted: 2,
    });
  });

  it('is shut out once our film shows it often', () => {
    const menu = menuOf({ ...input, habits: [{ path: 'Lone ', snaps: 9, limits: [] }] });
    expect(menu.calls.some(({ call }) => call === 'Lone')).toBe(false);
    expect(menu.leftOut.find(({ call }) => call === 'Lone')?.why).toContain('our film already shows it often');
    const rare = menuOf({ ...input, habits: [{ path: 'Lone ', snaps: 8, limits: [] }] });
    expect(rare.calls.some(({ call }) => call === 'Lone')).toBe(true);
  });

  it('keeps the cap on the calls beyond the uncounted ones', () => {
    for (const { share, calls, most, uncounted } of menuOf(input).pairings) {
      expect(share * calls! - uncounted!).toBeLessThanOrEqual(most! * (calls! - uncounted!) + 1e-6);
    }
  });
});

describe('limits that clash', () => {
  const clashOf = (input: MenuInput) => {
    const result = planMenu(input);
    if (result.kind === 'menu') throw new Error('expected a clash');
    return result.clashing;
  };

  it('names a smallest set of limits: four theories do not fit into two calls', () => {
    const clashing = clashOf(inputOf(inventedWeek(1, 12, { size: 2, reps: 1000, pairing_cap: 1 })));
    expect(clashing).toContain('at most 2 calls carried');
    expect(clashing.filter((words) => words.startsWith('one call of'))).toHaveLength(3);
    expect(clashing).toHaveLength(4);
  });

  it('names the pairing cap when a must stands alone on its path', () => {
    const week = inventedWeek(2, 12, { reps: 1000, size: 10, must: ['Lone'] });
    const lone: TestCall = { name: 'Lone', path: 'lone', family: 'hot', coverage: 'any' };
    const input = inputOf({ ...week, calls: [...week.calls, lone] });
    expect(clashOf({ ...input, habits: oftenOnFilm(input) })).toEqual([
      'Lone must be carried',
      'no path followed by one coverage on more than 70% of its calls',
    ]);
  });

  it('names a must that the library does not have, and one that is not sound', () => {
    const input = inputOf(inventedWeek(3, 10, { must: ['Nowhere', 'call 1'] }));
    const fault = { call: 'call 1', role: null, rule: 'deep', words: 'nobody owns the deep middle', declared: false };
    expect(clashOf({ ...input, soundness: [fault] })).toEqual([
      'Nowhere must be carried, but defense.yaml has no such call',
      'call 1 must be carried, but is not sound: nobody owns the deep middle',
    ]);
  });

  it('names the explosives when no pressure can be sent that seldom', () => {
    const week = inventedWeek(6, 10, { explosives: 0.5, reps: 1000, size: 10, pairing_cap: 1 });
    expect(clashOf(inputOf(week)).some((words) => words.startsWith('at most 0.5 explosive'))).toBe(true);
  });
});

describe('calls left out', () => {
  it('gives the reason: banned, not sound, alone on its path, or worth less', () => {
    const week = inventedWeek(7, 12, { size: 8, reps: 1000, ban: ['call 2'] });
    const lone: TestCall = { name: 'Lone', path: 'lone', family: 'hot', coverage: 'any' };
    const given = inputOf({ ...week, calls: [...week.calls, lone] });
    const input = { ...given, habits: oftenOnFilm(given) };
    const faults = [
      { call: 'call 3', role: 'will', rule: 'flat', words: 'nobody has the near flat', declared: false },
      { call: 'call 4', role: null, rule: 'flat', words: 'the far flat is given', declared: true },
    ];
    const menu = menuOf({ ...input, soundness: faults });
    const why = new Map(menu.leftOut.map(({ call, why }) => [call, why]));
    expect(why.get('call 2')).toBe('banned in week.yaml');
    expect(why.get('call 3')).toBe('not sound: nobody has the near flat');
    expect(why.get('call 4') ?? '').not.toContain('not sound');
    expect(why.get('Lone')).toMatch(
      /^the library has one coverage behind lone, our film already shows it often, too few for a pairing cap of 70%; .+ behind the path as well would admit it$/,
    );
    const carried = new Set(menu.calls.map(({ call }) => call));
    expect(new Set([...carried, ...why.keys()])).toEqual(new Set(input.library.calls.map(({ name }) => name)));
  });

  it('demands no theory that no sound call teaches, and says so', () => {
    const week = inventedWeek(8, 12, { reps: 1000, size: 8, pairing_cap: 1 });
    const calls = week.calls.filter(({ family }) => family !== 'four_under');
    expect(menuOf(inputOf({ ...week, calls })).notes).toEqual([
      'No sound, scored call of the library is a two-deep zone call, so none is demanded.',
    ]);
  });
});

describe('how sure', () => {
  it('prices are never below nothing, and a cap that does not bind costs nothing', () => {
    const menu = menuOf(inputOf(inventedWeek(10, 12, { size: 12, reps: 1000, pairing_cap: 0.99 })));
    for (const { points } of menu.prices) expect(points).toBeGreaterThanOrEqual(0);
    expect(menu.prices.find(({ limit }) => limit === 'practice repetitions')?.points).toBe(0);
  });

  it('the same input gives the same menu', () => {
    const input = inputOf(inventedWeek(11, 12));
    expect(JSON.stringify(planMenu(input))).toBe(JSON.stringify(planMenu(input)));
  });
});
