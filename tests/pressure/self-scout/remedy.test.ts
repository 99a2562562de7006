import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CallLibrary } from '../../../src/game/call-library.ts';
import type { SnapRecord } from '../../../src/game/film.ts';
import type { MenuResult } from '../../../src/pressure/menu/result.ts';
import type { ScoreChapter } from '../../../src/pressure/score/score-result.ts';
import type { FilmPath } from '../../../src/pressure/self-scout/film-path.ts';
import { readerOnPlan } from '../../../src/pressure/self-scout/reader-on-plan.ts';
import type { SwapCell } from '../../../src/pressure/self-scout/swap-cell.ts';
import { type SwapProblem, swapPlan } from '../../../src/pressure/self-scout/swap-plan.ts';
import { loadExactSolver } from '../../../src/stats/exact-solver.ts';
import { libraryOf } from '../menu/invented-menu-week.ts';
import { chapterOf, type Given } from './own-log.ts';

const aPath = (path: string, usual: number, other: number): FilmPath => ({
  path,
  snaps: usual + other,
  coverages: [
    { coverage: 'usual', snaps: usual },
    { coverage: 'other', snaps: other },
  ],
  favoriteBySituation: [],
});
const aCell = (path: string, snaps: number, cost: number): SwapCell => ({
  path,
  situation: 'all',
  instead: 'usual',
  coverage: 'other',
  snaps,
  cost,
});

describe('swapPlan', () => {
  it('takes as many as bring the four games on film to the cap, the cheapest first', () => {
    // Four games with 40 of 40, two of them to come: 40 - 12 = 28 of 40 is 70%. Twenty are to come, six must stay.
    const problem = {
      paths: [aPath('p', 40, 0)],
      cells: [aCell('p', 20, 0.3), aCell('p', 20, 0.1)],
      filmGames: 4,
      cap: 0.7,
    };
    expect(swapPlan(problem, 2)).toMatchObject({ needed: 12, done: 12, byCell: [2, 10], coming: 20, reaches: 0.7 });
    expect(swapPlan(problem, 2).costPoints).toBeCloseTo(1.6, 12);
    // One game: ten come, three of them must stay the usual coverage, so that the other is no habit.
    expect(swapPlan(problem, 1)).toMatchObject({ needed: 12, done: 7, reaches: 33 / 40 });
  });

  it('asks for nothing at the cap or below it', () => {
    const paths = [aPath('p', 7, 3), aPath('q', 6, 4)];
    expect(swapPlan({ paths, cells: [aCell('p', 7, 0)], filmGames: 2, cap: 0.7 }, 3)).toMatchObject({
      needed: 0,
      done: 0,
    });
  });

  const anyProblem = fc
    .array(fc.record({ usual: fc.nat(30), other: fc.nat(12), cost: fc.double({ min: -1, max: 1, noNaN: true }) }), {
      minLength: 1,
      maxLength: 5,
    })
    .map((rows): SwapProblem => {
      const paths = rows.map(({ usual, other }, i) => aPath(`p${i}`, usual + other + 1, other));
      const cells = rows.flatMap(({ usual, other, cost }, i) => [
        aCell(`p${i}`, (usual + other + 1) / 2, cost),
        aCell(`p${i}`, (usual + other + 1) / 2, cost / 3),
      ]);
      return { paths, cells, filmGames: 6, cap: 0.6 };
    });

  it('costs what a linear program says is the least for as many swaps', () => {
    fc.assert(
      fc.property(anyProblem, fc.integer({ min: 1, max: 6 }), (problem, games) => {
        const plan = swapPlan(problem, games);
        const most = leastCost(problem, games, plan.done);
        expect(-most.value).toBeCloseTo(plan.costPoints, 5);
        expect(
          leastCost(problem, games, plan.done + 0.01).status === 'infeasible' || plan.done >= plan.needed - 1e-9,
        ).toBe(true);
      }),
      { numRuns: 40, seed: 2 },
    );
  });

  it('a tighter cap never needs fewer, and nothing is swapped past its room', () => {
    fc.assert(
      fc.property(anyProblem, fc.integer({ min: 1, max: 6 }), (problem, games) => {
        const [loose, tight] = [swapPlan(problem, games), swapPlan({ ...problem, cap: 0.5 }, games)];
        expect(tight.needed).toBeGreaterThanOrEqual(loose.needed);
        loose.byCell.forEach((times, i) => {
          expect(times).toBeLessThanOrEqual((problem.cells[i]!.snaps * games) / 6 + 1e-9);
        });
      }),
      { numRuns: 40, seed: 3 },
    );
  });
});

const solveExactly = await loadExactSolver();

/** The same question put to a general solver, from the words of the rule. */
function leastCost({ paths, cells, filmGames, cap }: SwapProblem, games: number, total: number) {
  const ratio = games / filmGames;
  const window = ratio + Math.max(0, 4 - games) / filmGames;
  const solved = solveExactly({
    maximize: Object.fromEntries(cells.map(({ cost }, i) => [`x${i}`, -cost])),
    constraints: [
      { terms: Object.fromEntries(cells.map((_, i) => [`x${i}`, 1])), equal: total },
      ...cells.map(({ snaps }, i) => ({ terms: { [`x${i}`]: 1 }, max: snaps * ratio })),
      ...paths.map(({ path, snaps, coverages }) => {
        const [usual, other] = [coverages[0]!.snaps, coverages[1]!.snaps];
        const terms = Object.fromEntries(cells.flatMap((cell, i) => (cell.path === path ? [[`x${i}`, 1]] : [])));
        const room = Math.min(usual * ratio - (1 - cap) * snaps * ratio, ((usual - other) * window) / 2);
        return { terms, max: Math.max(0, room) };
      }),
    ],
  });
  return solved.status === 'optimal' ? solved : { status: solved.status, value: Number.NaN };
}

/** Six games with `a` always behind path p and `b` always behind path r, and a path q that is seldom called. */
const oneCoverage: SnapRecord[] = Array.from({ length: 6 }, (_, g) => [
  ...[8, 8, 8, 2].map(
    (to_go): SnapRecord => ({ game: `g${g}`, down: 3, to_go, family: 'man_free', path: 'p', coverage: 'a' }),
  ),
  ...[10, 10, 10, 10].map(
    (to_go): SnapRecord => ({ game: `g${g}`, down: 1, to_go, family: 'three_under', path: 'r', coverage: 'b' }),
  ),
  { game: `g${g}`, down: 1, to_go: 10, family: 'man_free', path: 'q', coverage: g % 2 === 0 ? 'a' : 'b' },
]).flat();
const library: CallLibrary = libraryOf([
  { name: 'P a', path: 'p', family: 'man_free', coverage: 'a' },
  { name: 'P b', path: 'p', family: 'three_under', coverage: 'b' },
  { name: 'Q a', path: 'q', family: 'man_free', coverage: 'a' },
]);
const scores = {
  calls: [
    ...[
      ['P a', 'third_long', 2],
      ['P b', 'third_long', 0.5],
      ['P a', 'third_short', 1],
      ['P b', 'third_short', 0.9],
    ].map(([call, situation, mean]) => ({ call, situation, points: { mean } })),
  ],
} as unknown as ScoreChapter;
const remedyOf = (given: Given = {}) => chapterOf(oneCoverage, { library, scores, ...given }).remedy;

describe('the remedy', () => {
  it('swaps first where it costs least, says what it costs and binds the menu', () => {
    const remedy = remedyOf({ menu: { pairing_games: 3 } });
    expect(remedy.guessRate).toBeGreaterThan(0.7);
    expect(remedy.swaps).toContainEqual(
      expect.objectContaining({ situation: 'third_short', path: 'p', instead: 'a', coverage: 'b', snaps: 3 }),
    );
    expect(remedy.swaps.find(({ situation }) => situation === 'third_short')?.costPoints).toBeCloseTo(3 * 0.01, 9);
    expect(remedy.swaps.find(({ situation }) => situation === 'third_long')?.costPoints).toBeCloseTo(5 * 0.15, 9);
    const snaps = remedy.swaps.reduce((sum, swap) => sum + swap.snaps, 0);
    // Four games of nine pressures, 34 of them as usual: 9 fewer would make 25 of 36, but with 8 of 16 p has no usual one.
    expect(snaps).toBe(8);
    expect(remedy.costPoints).toBeCloseTo(3 * 0.01 + 5 * 0.15, 9);
    expect(remedy.habits.find(({ path }) => path === 'p')?.changeUp).toEqual({
      usual: 'a',
      calls: expect.closeTo(8 / 3, 9),
    });
  });

  it('asks for nothing of a defense that plays one coverage whatever the path: a blind guess is as good', () => {
    const alike = Array.from({ length: 6 }, (_, g) =>
      ['p', 'p', 'p', 'p', 'r', 'r', 'r', 'r'].map(
        (path, i): SnapRecord => ({
          game: `g${g}`,
          down: 1,
          to_go: 10,
          family: 'man_free',
          path,
          coverage: i === g ? 'b' : 'a',
        }),
      ),
    ).flat();
    const { remedy } = chapterOf(alike, { library, scores, menu: { pairing_cap: 0.6 } });
    expect(remedy.guessRate).toBeGreaterThan(0.6);
    expect(remedy).toMatchObject({ givesAway: false, swaps: [], oneCoverage: ['r'] });
    expect(remedy.cap).toBeCloseTo(remedy.blindRate, 12);
  });

  it('leaves alone a path of which film shows too little, and says so', () => {
    const { tooRare, readable, swaps } = remedyOf();
    expect(tooRare).toEqual([{ path: 'q', snaps: 6 }]);
    expect(readable).toBe(9);
    expect(swaps.every(({ path }) => path === 'p')).toBe(true);
  });

  it('names no banned call, and says that nothing else is there', () => {
    const remedy = remedyOf({ menu: { ban: ['p B'] } });
    expect(remedy.swaps).toEqual([]);
    expect(remedy.earliest).toBeNull();
    expect(remedy.oneCoverage).toEqual(['p', 'r']);
  });

  it('says when more games are needed than were given', () => {
    const { earliest, byGames } = remedyOf({ menu: { pairing_games: 1, pairing_cap: 0.8 } });
    expect(earliest).toBeGreaterThan(1);
    expect(byGames.map(({ games }) => games)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it('asks for nothing while the reader stays within the cap', () => {
    expect(remedyOf({ menu: { pairing_cap: 0.95 } })).toMatchObject({
      swaps: [],
      earliest: 0,
      givesAway: false,
    });
  });
});

describe('readerOnPlan', () => {
  it('lets him name what film shows, and our usual coverage behind what it hardly shows', () => {
    const film = chapterOf(oneCoverage, { library });
    const menu = {
      pairings: [
        { path: 'p', coverage: 'a', share: 0.25, calls: 8 },
        { path: 'p', coverage: 'b', share: 0.75, calls: 8 },
        { path: 'q', coverage: 'a', share: 1, calls: 2 },
        { path: 'new', coverage: 'c', share: 1, calls: 2 },
      ],
    } as unknown as Extract<MenuResult, { kind: 'menu' }>;
    const reader = readerOnPlan(film, menu);
    expect(reader.rate).toBeCloseTo((8 * 0.25 + 2 + 0) / 12, 12);
    expect(reader.paths.map(({ path, known, guess }) => [path, known, guess])).toEqual([
      ['p', true, 'a'],
      ['q', false, 'a'],
      ['new', false, 'a'],
    ]);
    expect(readerOnPlan(film, { ...menu, pairings: [] }).rate).toBeNull();
  });
});
