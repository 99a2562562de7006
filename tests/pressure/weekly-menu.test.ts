import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { callLibrarySchema } from '../../src/ingest/call-library.ts';
import { ANSWERS } from '../../src/ingest/vocabulary.ts';
import { weekSettingsSchema } from '../../src/ingest/week-settings.ts';
import { emptyScoreDraws } from '../../src/pressure/score-draws.ts';
import type { CallScore } from '../../src/pressure/score-result.ts';
import { planMenu } from '../../src/pressure/weekly-menu.ts';
import { type MenuPlanInput, THEORIES } from '../../src/pressure/weekly-menu-problem.ts';
import { createRandom } from '../../src/stats/random.ts';

const whole = callLibrarySchema.parse(parse(readFileSync('data/demo/season/defense.yaml', 'utf8')));
const situations = [
  { id: 'first_ten', label: '1st and 10', expectedSnaps: 20 },
  { id: 'third_long', label: '3rd and long', expectedSnaps: 8 },
];

/** Two calls of a path each for three-under and man-free, one for the other theories: small enough to enumerate. */
const small = {
  ...whole,
  calls: whole.calls
    .filter((call, i, all) => all.filter((other, j) => other.family === call.family && j < i).length < 2)
    .slice(0, 14),
};

function inputFor(seed: number, menu: Record<string, unknown> = {}, library = small): MenuPlanInput {
  const random = createRandom(`scores ${seed}`);
  const calls = library.calls.flatMap((call): CallScore[] =>
    situations.map(({ id }) => {
      const mean = call.family === 'base' ? 0 : random.normal();
      return {
        call: call.name,
        family: call.family,
        situation: id,
        points: { mean, low: mean - 1, high: mean + 1 },
        explosives: { mean: 8, low: 4, high: 12 },
        chanceBest: 0,
        byAnswer: ANSWERS.map((answer) => ({ answer, points: call.family === 'base' ? 0 : mean + random.normal() })),
      };
    }),
  );
  return {
    library,
    settings: weekSettingsSchema.parse({ opponent: 'Harrow Creek', menu: { reps: 1000, pairing_cap: 1, ...menu } }),
    scores: { situations, families: [], calls, charting: [], disagreements: [] },
    draws: emptyScoreDraws(
      library.calls.map(({ name }) => name),
      situations.map(({ id }) => id),
      0,
    ),
    soundness: [],
  };
}

function menuOf(input: MenuPlanInput) {
  const result = planMenu(input);
  if (result.kind !== 'menu') throw new Error(`no menu: ${result.clashing.join(', ')}`);
  return result;
}

/** With trust 1 and no pairing cap the best mix is pure: enumerate every set of calls by hand. */
function bruteForce(input: MenuPlanInput, size: number): number {
  const pressures = input.library.calls.filter(({ family }) => family !== 'base');
  let best = Number.NEGATIVE_INFINITY;
  for (let set = 0; set < 2 ** pressures.length; set++) {
    const carried = pressures.filter((_, i) => set & (1 << i));
    const taught = THEORIES.every(
      ({ families }) =>
        !pressures.some((p) => families.includes(p.family)) || carried.some((c) => families.includes(c.family)),
    );
    if (carried.length <= size && taught)
      best = Math.max(
        best,
        pureValue(
          input,
          carried.map(({ name }) => name),
        ),
      );
  }
  return best;
}

/** Every carried call is called once a game at least, where that costs least; the rest goes to the best of all. */
function pureValue(input: MenuPlanInput, carried: readonly string[]): number {
  const worth = (name: string, id: string) =>
    (input.scores.calls.find((s) => s.call === name && s.situation === id)?.points.mean ?? 0) / 10;
  const best = situations.map(({ id }) => Math.max(0, ...carried.map((name) => worth(name, id))));
  const filled = situations.reduce((sum, { expectedSnaps }, s) => sum + expectedSnaps * best[s]!, 0);
  return (
    filled -
    carried.reduce(
      (sum, name) =>
        sum +
        (best.some((top, s) => top === worth(name, situations[s]!.id))
          ? 0
          : Math.min(...situations.map(({ id }, s) => best[s]! - worth(name, id)))),
      0,
    )
  );
}

describe('planMenu', () => {
  it('finds what enumerating every set of calls finds (trust 1, no pairing cap)', () => {
    for (const seed of [1, 2, 3]) {
      const input = inputFor(seed, { trust: 1, size: 5 });
      expect(menuOf(input).value).toBeCloseTo(bruteForce(input, 5), 6);
    }
  });

  it('covers every theory, keeps every limit, and mixes to at most one', () => {
    const menu = menuOf(inputFor(4, { size: 6, pairing_cap: 0.7, pressure_rate: { least: 0.2, most: 0.6 } }, whole));
    const families = menu.calls.map(({ family }) => family);
    for (const { families: members } of THEORIES)
      expect(members.some((family) => families.includes(family))).toBe(true);
    expect(menu.calls.filter(({ family }) => family !== 'base').length).toBeLessThanOrEqual(6);
    for (const { id, baseShare } of menu.situations) {
      const total = menu.calls.reduce(
        (sum, call) => sum + (call.mix.find((part) => part.situation === id)?.share ?? 0),
        0,
      );
      expect(total).toBeLessThanOrEqual(1 + 1e-6);
      expect(1 - baseShare).toBeGreaterThanOrEqual(0.2 - 1e-6);
      expect(1 - baseShare).toBeLessThanOrEqual(0.6 + 1e-6);
    }
    const lone = (path: string) =>
      new Set(whole.calls.filter((call) => call.path === path).map(({ coverage }) => coverage)).size === 1;
    for (const { path, share } of menu.pairings) if (!lone(path)) expect(share).toBeLessThanOrEqual(0.7 + 1e-6);
  });

  it('never loses worth by a larger budget, never gains by a tighter cap', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (seed) => {
        const measure = (menu: Record<string, unknown>) => {
          const found = menuOf(inputFor(seed, { size: 6, trust: 1, ...menu }));
          return found.value;
        };
        expect(measure({ size: 7 })).toBeGreaterThanOrEqual(measure({}) - 1e-6);
        expect(measure({ pairing_cap: 0.8 })).toBeLessThanOrEqual(measure({}) + 1e-6);
      }),
      { numRuns: 8, seed: 11 },
    );
  });

  it('says which limits clash when no menu meets them', () => {
    const result = planMenu(inputFor(5, { size: 2 }));
    if (result.kind !== 'infeasible') throw new Error('expected a clash');
    expect(result.clashing).toContain('at most 2 calls');
    expect(result.clashing.some((words) => words.startsWith('one call of'))).toBe(true);
  });

  it('leaves unsound and banned calls out with the reason, and carries a must', () => {
    const input = inputFor(6, { size: 8 });
    const [a, b, c] = input.library.calls.filter(
      ({ family }) => family === 'three_under' || family === 'zero' || family === 'hot',
    );
    const fault = {
      call: a!.name,
      role: null,
      rule: 'deep middle',
      words: 'nobody owns the deep middle',
      declared: false,
    };
    const menu = menuOf({
      ...input,
      settings: weekSettingsSchema.parse({
        opponent: 'x',
        menu: { reps: 1000, size: 8, ban: [b!.name], must: [c!.name] },
      }),
      soundness: [fault],
    });
    expect(menu.leftOut).toContainEqual({ call: a!.name, why: 'not sound: nobody owns the deep middle' });
    expect(menu.leftOut).toContainEqual({ call: b!.name, why: 'banned in week.yaml' });
    expect(menu.calls.map(({ call }) => call)).toContain(c!.name);
  });
});
