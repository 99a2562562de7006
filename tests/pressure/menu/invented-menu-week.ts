import type { Call, CallLibrary } from '../../../src/game/call-library.ts';
import { ANSWERS, FAMILIES, type Family } from '../../../src/game/vocabulary.ts';
import { type WeekSettings, weekSettingsSchema } from '../../../src/game/week-settings.ts';
import type { MenuInput } from '../../../src/pressure/menu/input.ts';
import { planMenu } from '../../../src/pressure/menu/menu.ts';
import type { MenuResult } from '../../../src/pressure/menu/result.ts';
import type { ScoreChapter } from '../../../src/pressure/score/score-result.ts';
import { createRandom } from '../../../src/stats/random.ts';

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
}

/** Points per ten snaps of one call: by situation and, when the answers differ, by answer. */
export type Worth = (call: string, situation: string, answer: string) => number;

export interface TestWeek {
  readonly calls: readonly TestCall[];
  /** Expected snaps by situation. */
  readonly snaps: Readonly<Record<string, number>>;
  readonly worth: Worth;
  readonly explosives?: (call: string) => number;
  readonly menu?: Partial<Record<keyof WeekSettings['menu'], unknown>>;
}

/** A library of the given calls; who rushes and covers is left empty, since the menu does not ask. */
export function libraryOf(calls: readonly TestCall[]): CallLibrary {
  return { level: 'high_school', roles: [], calls: calls.map(callOf) } as unknown as CallLibrary;
}

function callOf({ name, path, family, coverage, reps = 0, first = reps, installed = true }: TestCall): Call {
  return { name, path, family, coverage, installed, reps: { first, weekly: reps } } as unknown as Call;
}

/** The input of a week in which every answer is equally likely, so that a call's score is the mean over answers. */
export function inputOf({ calls, snaps, worth, explosives = () => 10, menu = {} }: TestWeek): MenuInput {
  const situations = Object.entries(snaps).map(([id, expectedSnaps]) => ({ id, label: id, expectedSnaps }));
  const scores = calls.flatMap(({ name, family }) =>
    situations.map(({ id }) => {
      const byAnswer = ANSWERS.map((answer) => ({ answer, points: worth(name, id, answer) }));
      const mean = byAnswer.reduce((sum, { points }) => sum + points, 0) / ANSWERS.length;
      const flat = { mean: explosives(name), low: 0, high: 0 };
      return { call: name, family, situation: id, points: { mean, low: mean, high: mean }, explosives: flat, byAnswer };
    }),
  );
  const families = situations.map(({ id }) => ({
    family: 'base',
    situation: id,
    explosives: { mean: explosives('base'), low: 0, high: 0 },
  }));
  return {
    library: libraryOf(calls),
    settings: weekSettingsSchema.parse({ opponent: 'Harrow Creek', menu: { pressure_rate: { most: 1 }, ...menu } }),
    scores: { situations, families, calls: scores, charting: [], disagreements: [] } as unknown as ScoreChapter,
    soundness: [],
  };
}

/** The menu, or an error that names the clash. */
export function menuOf(input: MenuInput): Extract<MenuResult, { kind: 'menu' }> {
  const result = planMenu(input);
  if (result.kind === 'infeasible') throw new Error(`no menu: ${result.clashing.join('; ')}`);
  return result;
}

/** An invented library of `count` pressures on paths of two or three coverages, with seeded worths. */
export function inventedWeek(seed: number, count: number, menu: TestWeek['menu'] = {}): TestWeek {
  const random = createRandom(`menu week ${seed}`);
  const calls = Array.from({ length: count }, (_, i): TestCall => {
    const family = pressures[i % pressures.length]!;
    const path = `path ${Math.floor(i / 2) % Math.ceil(count / 2.5)}`;
    return {
      name: `call ${i}`,
      path,
      family,
      coverage: `${family} ${random.integer(2)}`,
      reps: 5 + random.integer(12),
      first: 20 + random.integer(30),
      installed: random.uniform() < 0.7,
    };
  });
  const snaps = { first: 20 + random.integer(10), second: 10 + random.integer(10), third: 8 + random.integer(6) };
  const table = new Map<string, number>();
  for (const { name } of calls) {
    const level = 0.3 * random.normal();
    for (const id of Object.keys(snaps))
      for (const answer of ANSWERS) table.set(`${name} ${id} ${answer}`, level + random.normal());
  }
  const risk = new Map(calls.map(({ name }) => [name, 6 + 8 * random.uniform()]));
  return {
    calls,
    snaps,
    worth: (call, situation, answer) => table.get(`${call} ${situation} ${answer}`) ?? 0,
    explosives: (call) => risk.get(call) ?? 9,
    menu: { size: 6, reps: 110, ...menu },
  };
}
