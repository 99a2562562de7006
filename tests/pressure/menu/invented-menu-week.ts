import { ANSWERS } from '../../../src/game/answers.ts';
import type { Call, CallLibrary, GivenUp } from '../../../src/game/call-library.ts';
import { FAMILIES, type Family } from '../../../src/game/families.ts';
import { type WeekSettings, weekSettingsSchema } from '../../../src/game/week-settings.ts';
import type { FitChapter } from '../../../src/pressure/fit/fit-result.ts';
import type { MenuInput } from '../../../src/pressure/menu/input.ts';
import { planMenu } from '../../../src/pressure/menu/menu.ts';
import type { MenuResult } from '../../../src/pressure/menu/result.ts';
import type { ScoreChapter } from '../../../src/pressure/score/score-result.ts';
import { loadExactSolver } from '../../../src/stats/exact-solver.ts';
import { createRandom } from '../../../src/stats/random.ts';

const exact = await loadExactSolver();
const pressures = FAMILIES.filter((family) => family !== 'base');

/** What a test says of a call; the rest is filled in. */
export interface TestCall {
  readonly name: string;
  readonly path: string;
  readonly family: Family;
  readonly coverage: string;
  readonly reps?: number;
  readonly first?: number;
  readonly installed?: boolean;
  readonly given?: readonly GivenUp[];
}

/** A number of one call in a situation. */
export type Worth = (call: string, situation: string) => number;

export interface TestWeek {
  readonly calls: readonly TestCall[];
  /** Expected snaps by situation. */
  readonly snaps: Readonly<Record<string, number>>;
  /** Right less wrong, -1 to 1. */
  readonly net: Worth;
  /** Points per ten snaps; alike when left out. */
  readonly points?: Worth;
  /** Whether points tell a family from the best one; they do when left out. */
  readonly ruledOut?: (family: Family, situation: string) => boolean;
  readonly explosives?: (call: string) => number;
  readonly menu?: Partial<Record<keyof WeekSettings['menu'], unknown>>;
  readonly own?: MenuInput['own'];
  readonly holes?: NonNullable<FitChapter['holes']>;
}

/** A library of the given calls; who rushes and covers is left empty, since the menu does not ask. */
export function libraryOf(calls: readonly TestCall[]): CallLibrary {
  return { level: 'high_school', roles: [], calls: calls.map(callOf) } as unknown as CallLibrary;
}

function callOf({
  name,
  path,
  family,
  coverage,
  reps = 0,
  first = reps,
  installed = true,
  given = [],
}: TestCall): Call {
  const men = { rush: [], cover: [], adjust: {} };
  return { ...men, name, given, path, family, coverage, installed, reps: { first, weekly: reps } } as unknown as Call;
}

/** Limits wide open, so that a test sets only the one it is about. */
const OPEN = {
  size: 30,
  reps: 1000,
  new_calls: 30,
  rep_price: 0,
  regret: 20,
  trust: 1,
  pairing_cap: 1,
  path_share: 1,
  add_on_share: 1,
  pressure_rate: { least: 0.5, most: 0.5 },
};

/** The input of an invented week. */
export function inputOf(week: TestWeek): MenuInput {
  const { calls, snaps, net: netOf, points = () => 0, explosives = () => 10, menu = {}, own = null, holes = [] } = week;
  const { ruledOut = () => true } = week;
  const situations = Object.entries(snaps).map(([id, expectedSnaps]) => ({ id, expectedSnaps }));
  const flat = (mean: number) => ({ mean, low: mean, high: mean });
  const cells = calls.flatMap(({ name, family }) =>
    situations.map(({ id }) => ({ call: name, family, situation: id })),
  );
  const scores = cells.map((cell) => {
    const worth = points(cell.call, cell.situation);
    const byAnswer = ANSWERS.map((answer) => ({ answer, points: worth }));
    return { ...cell, points: flat(worth), explosives: flat(explosives(cell.call)), byAnswer };
  });
  const fits = cells.map((cell) => {
    const net = netOf(cell.call, cell.situation);
    const right = flat(Math.max(0, net));
    return {
      ...cell,
      right,
      neutral: flat(1 - Math.abs(net)),
      wrong: flat(Math.max(0, -net)),
      unknown: 0,
      net: flat(net),
    };
  });
  const families = situations.flatMap(({ id }) =>
    FAMILIES.map((family) => ({
      family,
      situation: id,
      explosives: flat(explosives(family)),
      ruledOutBy: ruledOut(family, id) ? 'league' : null,
    })),
  );
  return {
    library: libraryOf(calls),
    settings: weekSettingsSchema.parse({ opponent: 'Harrow Creek', menu: { ...OPEN, ...menu } }),
    scores: { situations, families, calls: scores } as unknown as ScoreChapter,
    fit: { rules: [], families: [], calls: fits, holes } as unknown as FitChapter,
    soundness: [],
    own,
    exact,
  };
}

/** The menu, or an error that names the clash. */
export function menuOf(input: MenuInput): Extract<MenuResult, { kind: 'menu' }> {
  const result = planMenu(input);
  if (result.kind === 'infeasible') throw new Error(`no menu: ${JSON.stringify(result.clashing)}`);
  return result;
}

/** An invented library of `count` pressures on paths of two or three coverages, with seeded fits and points. */
export function inventedWeek(seed: number, count: number, menu: TestWeek['menu'] = {}): TestWeek {
  const random = createRandom(`menu week ${seed}`);
  const calls = Array.from({ length: count }, (_, i): TestCall => {
    const family = pressures[i % pressures.length]!;
    return {
      name: `call ${i}`,
      path: `path ${Math.floor(i / 2) % Math.ceil(count / 2.5)}`,
      family,
      coverage: `${family} ${random.integer(2)}`,
      reps: 5 + random.integer(12),
      first: 20 + random.integer(30),
      installed: random.uniform() < 0.7,
    };
  });
  const snaps = { first: 20 + random.integer(10), second: 10 + random.integer(10), third: 8 + random.integer(6) };
  const drawn = (spread: number) => {
    const table = new Map<string, number>();
    for (const { name } of calls) {
      const level = spread * random.normal();
      for (const id of Object.keys(snaps)) table.set(`${name} ${id}`, level + spread * random.normal());
    }
    return (call: string, situation: string) => table.get(`${call} ${situation}`) ?? 0;
  };
  const [net, points] = [drawn(0.2), drawn(0.3)];
  const risk = new Map(calls.map(({ name }) => [name, 6 + 8 * random.uniform()]));
  return { calls, snaps, net, points, explosives: (call) => risk.get(call) ?? 9, menu };
}
