import { compileMenu } from '../../../src/pressure/menu/compile.ts';
import type { MenuInput } from '../../../src/pressure/menu/input.ts';
import type { MenuProblem } from '../../../src/pressure/menu/model.ts';
import { SHARED_REPS } from '../../../src/pressure/menu/reps.ts';
import { solvedElsewhere } from '../../stats/second-solver.ts';

/**
 * The best worth by trying every set of calls, each mixed by a second solver; null when no set keeps the limits. Written
 * from the words of the limits, not from the program of the tool. A pressure that no call is left for costs three.
 */
export function bestByEnumeration(input: MenuInput): number | null {
  const { problem } = compileMenu(input);
  const sets = allSets(problem.candidates.length).filter((set) => keepsCounts(problem, set));
  const byPoints = sets.map((set) => mixedElsewhere(problem, set, null)).filter((mixed) => mixed !== null);
  if (byPoints.length === 0) return null;
  const best = byPoints.reduce((most, mixed) => (mixed.total > most.total ? mixed : most));
  const forced = -(best.total + best.priced);
  const worths = sets.flatMap((set) => {
    const mixed = mixedElsewhere(problem, set, forced + input.settings.menu.regret);
    return mixed === null ? [] : [mixed.total - problem.repPrice * repsOf(problem, set)];
  });
  return Math.max(...worths);
}

export const SHORT_PRICE = 3;

/** What a call costs on which a reader of the paths is right beyond the share allowed: over the game, and elsewhere. */
const [READ_PRICE, LESS_READ_PRICE] = [0.6, 0.2];

function allSets(count: number): number[][] {
  return Array.from({ length: 2 ** count }, (_, word) =>
    Array.from({ length: count }, (__, c) => c).filter((c) => word & (1 << c)),
  );
}

function repsOf({ candidates }: MenuProblem, set: readonly number[]): number {
  const calls = set.map((c) => candidates[c]!);
  const dearest = (key: 'path' | 'coverage') =>
    [...new Set(calls.map(({ call }) => call[key]))].reduce(
      (sum, group) => sum + Math.max(...calls.filter(({ call }) => call[key] === group).map(({ reps }) => reps)),
      0,
    );
  const own = calls.reduce((sum, { reps }) => sum + reps, 0) * (1 - SHARED_REPS.path - SHARED_REPS.coverage);
  return own + SHARED_REPS.path * dearest('path') + SHARED_REPS.coverage * dearest('coverage');
}

function keepsCounts(problem: MenuProblem, set: readonly number[]): boolean {
  const { candidates, limits } = problem;
  const calls = set.map((c) => candidates[c]!);
  const names = new Set(calls.map(({ call }) => call.name));
  const isMust = (name: string) => limits.musts.has(name);
  return (
    set.length <= (limits.size ?? 99) &&
    calls.filter(({ isNew, call }) => isNew && !isMust(call.name)).length <= (limits.newCalls ?? 99) &&
    repsOf(problem, set) <= (limits.reps ?? 1e9) + 1e-9 &&
    limits.theories.every((theory) => calls.some((call) => call.theory === theory)) &&
    [...limits.musts].every((name) => names.has(name))
  );
}

/** The best mix of a set less what is unsent and read of it, and the price of those. */
interface Mixed {
  readonly total: number;
  readonly priced: number;
}

/** The fewest points a set gives up, or the most fit while it gives up no more than so many. */
function mixedElsewhere(problem: MenuProblem, set: readonly number[], mostGivenUp: number | null): Mixed | null {
  const { mixes, limits, candidates, baseExplosives } = problem;
  const all = mixes.reduce((sum, { pressures }) => sum + pressures, 0);
  const constraints: Bounds = {};
  const variables: Columns = {};
  if (mostGivenUp !== null) constraints['givenUp'] = { max: mostGivenUp + 1e-7 };
  if (limits.explosives !== null) constraints['explosives'] = { max: limits.explosives - baseExplosives };
  mixes.forEach(({ pressures, expectedSnaps }, m) => {
    constraints[`sent ${m}`] = { equal: pressures };
    variables[`short ${m}`] = { total: -SHORT_PRICE, [`sent ${m}`]: 1 };
    constraints[`add on ${m}`] = { max: (limits.addOnShare ?? 1) * expectedSnaps };
  });
  addReaders(problem, constraints, variables);
  for (const c of set) {
    const { call } = candidates[c]!;
    constraints[`use ${c}`] = { min: limits.leastCalls };
    constraints[`path ${call.path}`] = { max: (limits.pathShare ?? 1) * all };
    const limit = limits.paths.find(({ path }) => path === call.path);
    for (const coverage of limit?.coverages ?? []) {
      constraints[`pair ${call.path} ${coverage}`] = { max: (1 - limit!.most) * limit!.uncounted };
    }
    // The set is given, so a usual coverage in it asks for its change-ups outright.
    if (limit?.changeUp?.usual === call.coverage) constraints[`other ${call.path}`] = { min: limit.changeUp.calls };
    mixes.forEach(({ pressures }, m) => {
      if (candidates[c]!.closed[m]) return;
      const readable = limits.pathShareHere !== null && pressures >= 1.5;
      if (readable) constraints[`here ${call.path} ${m}`] = { max: limits.pathShareHere! * pressures };
      const own = columnOf(problem, c, m);
      variables[`${c} ${m}`] = { ...own, total: mostGivenUp === null ? -own['givenUp']! : own['fit']! };
    });
  }
  const solved = solvedElsewhere({ constraints, variables });
  if (!solved.feasible) return null;
  const values = solved as unknown as Record<string, number>;
  const priced = Object.entries(variables)
    .filter(([name]) => /^(short|read|beyond|missed)/.test(name))
    .reduce((sum, [name, column]) => sum - column['total']! * (values[name] ?? 0), 0);
  return { total: solved.result, priced };
}

type Bounds = Record<string, { min?: number; max?: number; equal?: number }>;
type Columns = Record<string, Record<string, number>>;

/** A reader names each path's usual coverage, over the game and where one situation is called often enough. */
function addReaders({ mixes, limits }: MenuProblem, constraints: Bounds, variables: Columns): void {
  if (limits.read === null) return;
  const all = mixes.reduce((sum, { pressures }) => sum + pressures, 0);
  constraints['read'] = { max: limits.read * all };
  variables['read'] = { total: -READ_PRICE, read: -1 };
  mixes.forEach(({ pressures }, m) => {
    if (pressures * (limits.pathShareHere ?? 1) < limits.readable) return;
    constraints[`read ${m}`] = { max: limits.paths[0]!.most * pressures };
    variables[`read ${m}`] = { total: -LESS_READ_PRICE, [`read ${m}`]: -1 };
  });
  for (const { path, coverages } of limits.paths) {
    const usual = (place: string) => Object.fromEntries(coverages.map((one) => [`usual ${path} ${one} ${place}`, -1]));
    for (const place of ['', ...mixes.keys()].map(String)) {
      for (const coverage of coverages) constraints[`usual ${path} ${coverage} ${place}`] = { max: 0 };
      variables[`usual ${path} ${place}`] = { ...usual(place), [place === '' ? 'read' : `read ${place}`]: 1 };
    }
    const pairs = coverages.map((coverage) => [`pair ${path} ${coverage}`, -1]);
    variables[`beyond ${path}`] = { total: -LESS_READ_PRICE, ...Object.fromEntries(pairs) };
    variables[`missed ${path}`] = { total: -1, [`other ${path}`]: 1 };
  }
}

/** What one call of a candidate in a mix counts for in every constraint. */
function columnOf({ candidates, limits }: MenuProblem, c: number, m: number): Record<string, number> {
  const { call, givenUp, fit, explosives } = candidates[c]!;
  const limit = limits.paths.find(({ path }) => path === call.path);
  const pairs = (limit?.coverages ?? []).map((coverage) => [
    `pair ${call.path} ${coverage}`,
    (call.coverage === coverage ? 1 : 0) - limit!.most,
  ]);
  const changesUp = limit?.changeUp && limit.changeUp.usual !== call.coverage;
  return {
    givenUp: givenUp[m]!,
    fit: fit[m]!,
    explosives: explosives[m]!,
    [`sent ${m}`]: 1,
    [`use ${c}`]: 1,
    [`path ${call.path}`]: 1,
    [`here ${call.path} ${m}`]: 1,
    [`usual ${call.path} ${call.coverage} `]: 1,
    [`usual ${call.path} ${call.coverage} ${m}`]: 1,
    ...(call.family === 'add_on' ? { [`add on ${m}`]: 1 } : {}),
    ...(changesUp ? { [`other ${call.path}`]: 1 } : {}),
    ...Object.fromEntries(pairs),
  };
}

/** The price of what a reader of the paths gets of a mix beyond the limits, from the calls a game by candidate and mix. */
export function readPriceOf({ mixes, limits, candidates }: MenuProblem, times: (call: string, m: number) => number) {
  if (limits.read === null) return 0;
  const usual = (of: (call: string) => number) =>
    limits.paths.reduce((sum, { path, coverages }) => {
      const behind = (coverage: string) =>
        candidates
          .filter(({ call }) => call.path === path && call.coverage === coverage)
          .reduce((total, { call }) => total + of(call.name), 0);
      return sum + Math.max(0, ...coverages.map(behind));
    }, 0);
  const all = mixes.reduce((sum, { pressures }) => sum + pressures, 0);
  const game = usual((call) => mixes.reduce((sum, _, m) => sum + times(call, m), 0));
  const here = mixes.map(({ pressures }, m) => {
    if (pressures * (limits.pathShareHere ?? 1) < limits.readable) return 0;
    return Math.max(0, usual((call) => times(call, m)) - limits.paths[0]!.most * pressures);
  });
  const beyond = limits.paths.map(({ path, coverages, most, uncounted }) => {
    const calls = (coverage: string | null) =>
      candidates
        .filter(({ call }) => call.path === path && (coverage === null || call.coverage === coverage))
        .reduce((sum, { call }) => sum + mixes.reduce((total, _, m) => total + times(call.name, m), 0), 0);
    const over = coverages.map((coverage) => calls(coverage) - most * calls(null) - (1 - most) * uncounted);
    return Math.max(0, ...over);
  });
  const less = [...here, ...beyond].reduce((sum, one) => sum + one, 0);
  return READ_PRICE * Math.max(0, game - limits.read * all) + LESS_READ_PRICE * less;
}
