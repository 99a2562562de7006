import { describe, expect, it } from 'vitest';
import { compileMenu } from '../../../src/pressure/menu/compile.ts';
import { quietShare } from '../../../src/pressure/menu/habits.ts';
import type { MenuInput, OwnHabits } from '../../../src/pressure/menu/input.ts';
import { planMenu } from '../../../src/pressure/menu/menu.ts';
import { share } from '../../../src/stats/share.ts';
import { bestByEnumeration, readPriceOf, SHORT_PRICE } from './elsewhere.ts';
import { inputOf, inventedWeek, menuOf, type TestCall, type TestWeek } from './invented-menu-week.ts';

/** One call of each theory, all alike; a test gives one of them a reason to be liked. */
const FOUR: readonly TestCall[] = [
  { name: 'Roof', path: 'a', family: 'three_under', coverage: 'roof' },
  { name: 'Split', path: 'b', family: 'four_under', coverage: 'split' },
  { name: 'Lock', path: 'c', family: 'man_free', coverage: 'lock' },
  { name: 'Hot', path: 'd', family: 'hot', coverage: 'hot' },
];
const week = (change: Partial<TestWeek> = {}): TestWeek => ({
  calls: FOUR,
  snaps: { first: 30, third: 20 },
  net: () => 0,
  ...change,
});
const only =
  (name: string, high = 0.5) =>
  (call: string) =>
    call === name ? high : 0;
const callsOf = (input: MenuInput) => menuOf(input).calls.map(({ call }) => call);
const timesOf = (menu: ReturnType<typeof menuOf>, name: string) =>
  menu.calls.find(({ call }) => call === name)?.expectedCalls ?? 0;
const film = (change: Partial<OwnHabits> = {}): OwnHabits => ({
  pressureRate: 0.5,
  paths: [],
  callsOnFilm: new Set(FOUR.map(({ name }) => name.toLowerCase())),
  ...change,
});

describe('the menu', () => {
  it.each([1, 2, 3, 4, 5, 6])('is the best of all sets, each mixed by a second solver (library %i)', (seed) => {
    const settings = [
      { size: 5, reps: 90, rep_price: 0.02, pairing_cap: 0.7, path_share: 0.45, add_on_share: 0.15, regret: 0.5 },
      { size: 6, new_calls: 1, rep_price: 0.05, path_share: 0.6, regret: 0.2 },
      { size: 4, explosives: 5, regret: 2, pairing_cap: 0.6 },
    ];
    for (const menu of settings) {
      const input = inputOf(inventedWeek(seed, 8, menu));
      const best = bestByEnumeration(input);
      const result = planMenu(input);
      if (best === null) expect(result.kind).toBe('infeasible');
      else {
        const found = menuOf(input);
        const carried = new Set(found.calls.map(({ call }) => call));
        const total = found.calls.reduce((sum, call) => {
          const own = inputOf(inventedWeek(seed, 8, menu)).fit.calls.filter((one) => one.call === call.call);
          const lost = call.isNew ? 0.03 : 0;
          return (
            sum +
            call.mix.reduce((calledFor, { situation, share: part }) => {
              const snaps = found.situations.find(({ id }) => id === situation)!.expectedSnaps;
              return calledFor + part * snaps * (own.find((one) => one.situation === situation)!.net.mean - lost);
            }, 0)
          );
        }, 0);
        const price = input.settings.menu.rep_price;
        const parts = input.library.calls.filter(({ name }) => carried.has(name));
        const reps = (call: (typeof parts)[number]) => (call.installed ? call.reps.weekly : call.reps.first);
        const most = (key: 'path' | 'coverage') =>
          [...new Set(parts.map((call) => call[key]))].reduce(
            (sum, word) => sum + Math.max(...parts.filter((call) => call[key] === word).map(reps)),
            0,
          );
        const all =
          0.5 * parts.reduce((sum, call) => sum + reps(call), 0) + 0.3 * most('path') + 0.2 * most('coverage');
        const planned = 0.5 * found.situations.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0);
        const sent = found.calls.reduce((sum, { expectedCalls }) => sum + expectedCalls, 0);
        const { problem } = compileMenu(input);
        const read = readPriceOf(problem, (name, m) => {
          const { situations, expectedSnaps } = problem.mixes[m]!;
          const mix = found.calls.find(({ call }) => call === name)?.mix ?? [];
          return (mix.find(({ situation }) => situation === situations[0])?.share ?? 0) * expectedSnaps;
        });
        expect(total - price * all - SHORT_PRICE * (planned - sent) - read).toBeCloseTo(best, 2);
        expect(found.proof).toEqual({ proved: true });
      }
    }
  });

  it('calls what fits best where it fits', () => {
    const net = (call: string, situation: string) => (call === (situation === 'first' ? 'Split' : 'Lock') ? 0.4 : 0);
    const menu = menuOf(inputOf(week({ net })));
    const mixIn = (name: string, id: string) =>
      menu.calls.find(({ call }) => call === name)?.mix.find(({ situation }) => situation === id)?.share ?? 0;
    expect(mixIn('Split', 'first')).toBeGreaterThan(0.4);
    expect(mixIn('Lock', 'third')).toBeGreaterThan(0.4);
    expect(mixIn('Lock', 'first')).toBeLessThan(0.1);
  });

  const hotPays = (call: string) => (call === 'Hot' ? 2 : 0);

  it('gives up no more points than allowed, whatever fits', () => {
    const of = (regret: number) => menuOf(inputOf(week({ net: only('Roof'), points: hotPays, menu: { regret } })));
    expect(of(0.2).regret.points).toBeLessThanOrEqual(0.2 + 1e-5);
    expect(timesOf(of(0.2), 'Hot')).toBeGreaterThan(timesOf(of(20), 'Hot'));
    expect(timesOf(of(20), 'Roof')).toBeGreaterThan(20);
  });

  it('counts no points that no evidence tells apart', () => {
    const level = week({ net: only('Roof'), points: hotPays, ruledOut: () => false, menu: { regret: 0 } });
    expect(menuOf(inputOf(level)).regret).toEqual({ points: 0, allowed: 0, forced: 0 });
    expect(timesOf(menuOf(inputOf(level)), 'Roof')).toBeGreaterThan(20);
    const onThird = { ...level, ruledOut: (_: string, situation: string) => situation === 'third' };
    const menu = menuOf(inputOf(onThird));
    const inMix = (name: string, id: string) =>
      menu.calls.find(({ call }) => call === name)?.mix.find(({ situation }) => situation === id)?.share ?? 0;
    expect(inMix('Roof', 'third')).toBeLessThan(0.01);
    expect(inMix('Hot', 'third')).toBeGreaterThan(0.4);
    expect(inMix('Roof', 'first')).toBeGreaterThan(0.4);
  });

  it('is the same whatever the order of the library', () => {
    const invented = inventedWeek(7, 10, { size: 6, rep_price: 0.02, pairing_cap: 0.7, path_share: 0.45 });
    const turned = { ...invented, calls: [...invented.calls].reverse() };
    const plain = (input: MenuInput) => JSON.stringify(menuOf(input));
    expect(plain(inputOf(turned))).toBe(plain(inputOf(invented)));
  });

  it('is the same for the same input', () => {
    const input = inputOf(inventedWeek(11, 12));
    expect(JSON.stringify(planMenu(input))).toBe(JSON.stringify(planMenu(input)));
  });

  it('holds no number without an end', () => {
    const text = JSON.stringify(planMenu(inputOf(inventedWeek(12, 10, { pairing_cap: 0.7 }))), (_, value) =>
      typeof value === 'number' && !Number.isFinite(value) ? 'no end' : value,
    );
    expect(text).not.toContain('no end');
    expect(text).not.toContain('"gap":null');
  });
});

describe('a rep is not free', () => {
  const calls: readonly TestCall[] = [
    ...FOUR,
    { name: 'New', path: 'e', family: 'hot', coverage: 'new', reps: 6, first: 40, installed: false },
  ];

  it('so a new call must earn what it costs to install', () => {
    const net = (call: string) => (call === 'New' ? 0.05 : 0);
    expect(callsOf(inputOf(week({ calls, net })))).toContain('New');
    const priced = inputOf(week({ calls, net, menu: { rep_price: 0.05 } }));
    expect(callsOf(priced)).not.toContain('New');
    expect(menuOf(priced).leftOut.find(({ call }) => call === 'New')?.why).toMatchObject({ kind: 'costs_reps' });
    const worthy = inputOf(week({ calls, net: only('New', 0.6), menu: { rep_price: 0.05 } }));
    expect(callsOf(worthy)).toContain('New');
  });

  it('and no more new calls come in than asked for', () => {
    const net = only('New');
    expect(callsOf(inputOf(week({ calls, net, menu: { new_calls: 0 } })))).not.toContain('New');
    expect(callsOf(inputOf(week({ calls, net, menu: { new_calls: 1 } })))).toContain('New');
  });

  it('and calls on our film are favored over others as good', () => {
    const pair: readonly TestCall[] = [
      ...FOUR,
      { name: 'Another Roof', path: 'f', family: 'three_under', coverage: 'r' },
    ];
    const menu = menuOf(inputOf(week({ calls: pair, menu: { size: 4 }, own: film() })));
    expect(menu.calls.map(({ call }) => call)).not.toContain('Another Roof');
  });

  it('and reps in a week are limited', () => {
    const dear: readonly TestCall[] = FOUR.map((call) => ({ ...call, reps: 20 }));
    expect(planMenu(inputOf(week({ calls: dear, menu: { reps: 60 } }))).kind).toBe('infeasible');
    expect(menuOf(inputOf(week({ calls: dear, menu: { reps: 80 } }))).reps).toBe(80);
  });
});

describe('unpredictable', () => {
  it('no path takes more than its share of our pressures', () => {
    const menu = menuOf(inputOf(week({ net: only('Roof'), menu: { path_share: 0.45 } })));
    expect(menu.paths[0]).toMatchObject({ path: 'a' });
    expect(menu.paths[0]?.share).toBeCloseTo(0.45, 6);
    expect(menu.prices.find(({ limit }) => limit === 'path')?.gain).toBeGreaterThan(0);
  });

  it('no path takes a situation for itself', () => {
    const net = (call: string, situation: string) => (call === 'Lock' && situation === 'third' ? 0.5 : 0);
    const menu = menuOf(inputOf(week({ net, menu: { path_share: 0.45 } })));
    const lock = menu.calls.find(({ call }) => call === 'Lock')?.mix.find(({ situation }) => situation === 'third');
    expect((lock?.share ?? 0) / 0.5).toBeCloseTo(0.6, 6);
  });

  const PAIRED: readonly TestCall[] = [...FOUR, { name: 'Roof Lock', path: 'a', family: 'man_free', coverage: 'lock' }];
  const onFilm = (changeUp: { usual: string; calls: number } | null = null) =>
    film({ paths: [{ path: 'a', snaps: 40, changeUp }] });

  it('who knows every path’s usual coverage is right on no more than four games of film keep under the cap', () => {
    const menu = menuOf(inputOf(week({ calls: PAIRED, net: only('Roof'), menu: { pairing_cap: 0.7 }, own: onFilm() })));
    expect(menu.read).toMatchObject({ most: 0.7, lone: [] });
    expect(menu.read?.share).toBeCloseTo(quietShare(0.7, 25), 6);
    const roof = menu.pairings.find(({ path, coverage }) => path === 'a' && coverage === 'roof');
    expect(roof).toMatchObject({ most: 0.7, uncounted: 0 });
    expect(roof?.share).toBeLessThanOrEqual(0.7);
  });

  it('no coverage reads off its path in one situation either', () => {
    const net = (call: string, situation: string) =>
      call === (situation === 'first' ? 'Roof' : 'Roof Lock') ? 0.15 : 0;
    const menu = menuOf(inputOf(week({ calls: PAIRED, net, menu: { pairing_cap: 0.7 }, own: onFilm() })));
    for (const [situation, most] of [
      ['first', 'Roof'],
      ['third', 'Roof Lock'],
    ]) {
      const shares = menu.calls.flatMap(({ call, mix }) =>
        mix.filter((one) => one.situation === situation).map(({ share: part }) => ({ call, part })),
      );
      expect(shares.find(({ call }) => call === most)?.part).toBeLessThanOrEqual(0.7 * 0.5 + 1e-6);
    }
  });

  it('a usual coverage leaves our film’s change-ups to the other one, and no more', () => {
    const menuWith = (changeUp: { usual: string; calls: number } | null) =>
      menuOf(inputOf(week({ calls: PAIRED, net: only('Roof'), menu: { pairing_cap: 0.7 }, own: onFilm(changeUp) })));
    expect(timesOf(menuWith({ usual: 'roof', calls: 11 }), 'Roof Lock')).toBeCloseTo(11, 5);
    // The mix asks for more than half a call, and it still binds.
    const few = menuWith({ usual: 'roof', calls: 0.5 });
    expect(timesOf(few, 'Roof Lock')).toBeCloseTo(timesOf(menuWith(null), 'Roof Lock'), 6);
  });

  it('a path on film with one coverage must be worth being read, and then it is said', () => {
    const other: TestCall = { name: 'Other Roof', path: 'f', family: 'three_under', coverage: 'r' };
    const menuWith = (high: number) =>
      menuOf(
        inputOf(
          week({
            calls: [...FOUR, other],
            snaps: { first: 16 },
            net: only('Roof', high),
            menu: { pairing_cap: 0.7 },
            own: onFilm(),
          }),
        ),
      );
    expect(timesOf(menuWith(0.03), 'Roof')).toBe(0);
    const worth = menuWith(0.9);
    expect(timesOf(worth, 'Roof')).toBeGreaterThanOrEqual(5);
    expect(worth.read?.share).toBeGreaterThan(0.7);
    expect(worth.read?.lone.map(({ path }) => path)).toContain('a');
  });

  it('sends what the limits leave and says how much that is', () => {
    const menu = menuOf(inputOf(week({ net: only('Roof'), menu: { path_share: 0.1 } })));
    expect(menu.notes).toContainEqual({ kind: 'short', sent: expect.closeTo(10, 5), planned: 25 });
  });

  it('a path hardly on film may come unpaired twice a game', () => {
    const menu = menuOf(
      inputOf(week({ net: only('Roof', 0.03), menu: { pairing_cap: 0.7, size: 4 }, snaps: { first: 16 } })),
    );
    for (const { calls, uncounted } of menu.pairings) expect(calls).toBeLessThanOrEqual(uncounted + 1e-6);
    expect(menu.notes).toContainEqual({ kind: 'uncounted_paths', paths: ['a', 'b', 'c', 'd'] });
  });

  it('what is plainly wrong in a situation is not called there to hide another coverage', () => {
    const net = (call: string) => ({ Roof: 0.5, 'Roof Lock': -0.4 })[call] ?? 0;
    const menu = menuOf(inputOf(week({ calls: PAIRED, net, menu: { pairing_cap: 0.7 }, own: onFilm() })));
    expect(timesOf(menu, 'Roof Lock')).toBe(0);
    expect(menu.leftOut.find(({ call }) => call === 'Roof Lock')?.why).toMatchObject({ kind: 'plainly_wrong' });
  });

  it('but a staff that must have it gets it', () => {
    const net = (call: string) => ({ Roof: 0.5, 'Roof Lock': -0.4 })[call] ?? 0;
    const menu = { pairing_cap: 0.7, must: ['roof lock'] };
    expect(timesOf(menuOf(inputOf(week({ calls: PAIRED, net, menu, own: onFilm() }))), 'Roof Lock')).toBeGreaterThan(
      0.99,
    );
  });

  it('an add-on is never an every-down call', () => {
    const calls: readonly TestCall[] = [...FOUR, { name: 'Extra', path: 'e', family: 'add_on', coverage: 'add' }];
    const menu = menuOf(inputOf(week({ calls, net: only('Extra'), menu: { add_on_share: 0.15 } })));
    for (const { share: part } of menu.calls.find(({ call }) => call === 'Extra')?.mix ?? []) {
      expect(part).toBeLessThanOrEqual(0.15 + 1e-6);
    }
    expect(timesOf(menu, 'Extra')).toBeCloseTo(0.15 * 50, 5);
  });
});

/** Snaps on which they run the quarterback, by situation. */
const runs = (first: number, third: number) => [
  {
    hole: 'quarterback_run' as const,
    met: share(38, 100),
    share: 0.6 * first + 0.4 * third,
    situations: [
      { situation: 'first', share: first },
      { situation: 'third', share: third },
    ],
  },
];
const GIVING: readonly TestCall[] = FOUR.map((call) =>
  call.name === 'Lock' ? { ...call, given: ['quarterback_run'] } : call,
);

describe('a declared hole', () => {
  it('keeps a call at home when they meet it too often everywhere, and its theory is then not asked for', () => {
    const menu = menuOf(inputOf(week({ calls: GIVING, net: only('Lock'), holes: runs(0.4, 0.3) })));
    expect(menu.calls.map(({ call }) => call)).not.toContain('Lock');
    expect(menu.leftOut).toContainEqual({
      call: 'Lock',
      why: { kind: 'hole', hole: 'quarterback_run', count: 38, trials: 100 },
    });
    expect(menu.notes).toContainEqual({ kind: 'no_theory', theory: 'man_free' });
  });

  it('closes a call only where they meet it, and the menu says so', () => {
    const menu = menuOf(inputOf(week({ calls: GIVING, net: only('Lock'), holes: runs(0.4, 0.05) })));
    const lock = menu.calls.find(({ call }) => call === 'Lock');
    expect(lock?.mix.map(({ situation }) => situation)).toEqual(['third']);
    expect(lock?.expectedCalls).toBeCloseTo(10, 5);
    expect(menu.notes).toContainEqual({
      kind: 'closed',
      call: 'Lock',
      hole: 'quarterback_run',
      situations: ['first'],
    });
  });

  it('is no reason below the share the week sets, nor for a call that does not give it up', () => {
    const holes = runs(0.4, 0.3);
    expect(callsOf(inputOf(week({ calls: GIVING, holes, menu: { hole_share: 0.4 } })))).toContain('Lock');
    expect(callsOf(inputOf(week({ holes })))).toContain('Lock');
  });

  it('is never forced in by the pairing cap, and what then can be read is said', () => {
    const calls: readonly TestCall[] = [
      ...FOUR.filter(({ name }) => name !== 'Lock'),
      { name: 'Free', path: 'f', family: 'man_free', coverage: 'free' },
      { name: 'Lock', path: 'a', family: 'man_free', coverage: 'lock', given: ['quarterback_run'] },
      { name: 'Other Roof', path: 'g', family: 'three_under', coverage: 'roof' },
    ];
    const paths = [{ path: 'a', snaps: 40, changeUp: null }];
    const menu = menuOf(
      inputOf(
        week({ calls, net: only('Roof'), menu: { pairing_cap: 0.7 }, own: film({ paths }), holes: runs(0.4, 0.3) }),
      ),
    );
    expect(menu.calls.map(({ call }) => call)).not.toContain('Lock');
    // Roof lost its other coverage to the hole, so the cap bends for it.
    expect(menu.calls.map(({ call }) => call)).toContain('Roof');
    expect(menu.read?.share).toBeGreaterThan(0.7);
  });
});

describe('duties and clashes', () => {
  it('every theory on offer is covered', () => {
    const menu = menuOf(inputOf(inventedWeek(8, 12)));
    const families = new Set(menu.calls.map(({ family }) => family));
    expect(families.has('three_under')).toBe(true);
    expect(families.has('four_under')).toBe(true);
  });

  it('every carried call is called at least once a game', () => {
    for (const { expectedCalls } of menuOf(inputOf(inventedWeek(9, 12))).calls) {
      expect(expectedCalls).toBeGreaterThanOrEqual(1 - 1e-6);
    }
  });

  it('limits that cannot hold together are named, and lifting any one of them helps', () => {
    const result = planMenu(inputOf(week({ menu: { size: 3 } })));
    if (result.kind === 'menu') throw new Error('four theories do not fit into three calls');
    expect(result.clashing.map(({ kind }) => kind)).toEqual(['size', 'theory', 'theory', 'theory', 'theory']);
  });

  it('a must that is not in the library, or out, is named', () => {
    const result = planMenu(inputOf(week({ menu: { must: ['Ghost', 'Lock'], ban: ['Lock'] } })));
    if (result.kind === 'menu') throw new Error('Ghost cannot be carried');
    expect(result.clashing).toEqual([
      { kind: 'impossible_must', of: 'Ghost', why: null },
      { kind: 'impossible_must', of: 'Lock', why: { kind: 'banned' } },
    ]);
  });

  it('the price of a limit is what loosening it brings', () => {
    const tight = week({ net: only('Roof'), menu: { path_share: 0.45 } });
    const [one, more] = [0.45, 0.55].map((path_share) => menuOf(inputOf({ ...tight, menu: { path_share } })));
    const gain = 0.5 * ((more ? timesOf(more, 'Roof') : 0) - (one ? timesOf(one, 'Roof') : 0));
    expect(one?.prices.find(({ limit }) => limit === 'path')?.gain).toBeCloseTo(gain, 4);
  });

  it('a limit that does not bind costs nothing', () => {
    for (const { gain } of menuOf(inputOf(week({ net: only('Roof') }))).prices) expect(gain).toBeGreaterThanOrEqual(0);
  });

  it('the next-best menu is another set of calls, and worth no more', () => {
    const menu = menuOf(inputOf(inventedWeek(10, 10, { size: 6, rep_price: 0.02 })));
    expect(menu.nextBest?.less).toBeGreaterThanOrEqual(-1e-6);
    expect([...(menu.nextBest?.added ?? []), ...(menu.nextBest?.dropped ?? [])]).not.toEqual([]);
    expect(menu.nextBest?.proved).toBe(true);
  });
});
