import type { LinearConstraint } from '../stats/mixed-program.ts';
import { type MenuProblem, THEORIES } from './weekly-menu-problem.ts';
import { costOf, PATH_SHARE, pathCost } from './weekly-menu-reps.ts';
import { carry, mixed, pressures } from './weekly-menu-variables.ts';

/** A limit of the menu: its words, and what it demands of the program. */
export interface MenuLimit {
  readonly words: string;
  readonly constraints: readonly LinearConstraint[];
}

/** Every limit of week.yaml and of the trade as constraints, each under its own words. */
export function menuLimits(problem: MenuProblem): MenuLimit[] {
  return [
    sizeLimit(problem),
    repsLimit(problem),
    ...theoryLimits(problem),
    ...mustLimits(problem),
    ...rateLimits(problem),
    pairingLimit(problem),
    ...riskLimit(problem),
  ];
}

const pathName = (path: string) => `y ${path}`;

function sizeLimit(problem: MenuProblem): MenuLimit {
  const terms = new Map(pressures(problem).map((c) => [carry(c), 1]));
  return { words: `at most ${problem.settings.size} calls`, constraints: [{ terms, max: problem.settings.size }] };
}

function repsLimit(problem: MenuProblem): MenuLimit {
  const terms = new Map<string, number>();
  const constraints: LinearConstraint[] = [];
  for (const c of pressures(problem)) {
    const call = problem.candidates[c]?.call;
    if (!call) continue;
    terms.set(carry(c), (1 - PATH_SHARE) * costOf(call));
    terms.set(pathName(call.path), PATH_SHARE * pathCost(problem, call.path));
    constraints.push({ terms: { [carry(c)]: 1, [pathName(call.path)]: -1 }, max: 0 });
  }
  constraints.push({ terms, max: problem.settings.reps });
  return { words: `at most ${problem.settings.reps} repetitions`, constraints };
}

function theoryLimits(problem: MenuProblem): MenuLimit[] {
  return THEORIES.flatMap(({ theory, families }) => {
    const members = pressures(problem).filter((c) =>
      families.some((family) => family === problem.candidates[c]?.call.family),
    );
    if (members.length === 0) return [];
    return [
      { words: `one call of ${theory}`, constraints: [{ terms: new Map(members.map((c) => [carry(c), 1])), min: 1 }] },
    ];
  });
}

function mustLimits(problem: MenuProblem): MenuLimit[] {
  return problem.settings.must.map((name) => {
    const c = problem.candidates.findIndex(({ call }) => call.name.toLowerCase() === name.toLowerCase());
    const terms: Record<string, number> =
      c < 0 || problem.candidates[c]?.call.family === 'base' ? {} : { [carry(c)]: 1 };
    const known = problem.candidates[c]?.call.family === 'base';
    return { words: `${name} must be carried`, constraints: known ? [] : [{ terms, min: 1 }] };
  });
}

function rateLimits(problem: MenuProblem): MenuLimit[] {
  const { least, most } = problem.settings.pressure_rate;
  const rate = (bound: { min?: number; max?: number }) =>
    problem.situations.map((_, s) => ({ terms: new Map(pressures(problem).map((c) => [mixed(c, s), 1])), ...bound }));
  return [
    {
      words: `pressure on at least ${Math.round(100 * least)}% of each situation's snaps`,
      constraints: least > 0 ? rate({ min: least }) : [],
    },
    {
      words: `pressure on at most ${Math.round(100 * most)}% of each situation's snaps`,
      constraints: most < 1 ? rate({ max: most }) : [],
    },
  ];
}

/**
 * Over the week no path is followed by one coverage in more than the cap of its calls; linear in the mix. A path with one
 * coverage in the library cannot be mixed and is left out: the menu shows its pairing as it is.
 */
function pairingLimit(problem: MenuProblem): MenuLimit {
  const cap = problem.settings.pairing_cap;
  const calls = pressures(problem).flatMap((c) => problem.candidates[c]?.call ?? []);
  const pairs = new Map(calls.map(({ path, coverage }) => [JSON.stringify([path, coverage]), { path, coverage }]));
  const mixable = [...pairs.values()].filter(({ path, coverage }) =>
    calls.some((call) => call.path === path && call.coverage !== coverage),
  );
  return {
    words: `no path followed by one coverage on more than ${Math.round(100 * cap)}% of its calls`,
    constraints: cap < 1 ? mixable.map((pair) => pairingConstraint(problem, pair, cap)) : [],
  };
}

function pairingConstraint(
  problem: MenuProblem,
  pair: { path: string; coverage: string },
  cap: number,
): LinearConstraint {
  const terms = new Map<string, number>();
  for (const c of pressures(problem)) {
    const call = problem.candidates[c]?.call;
    if (call?.path !== pair.path) continue;
    const factor = (call.coverage === pair.coverage ? 1 : 0) - cap;
    for (const [s, { expectedSnaps }] of problem.situations.entries()) terms.set(mixed(c, s), expectedSnaps * factor);
  }
  return { terms, max: 0 };
}

function riskLimit(problem: MenuProblem): MenuLimit[] {
  const most = problem.settings.explosives;
  if (most === undefined) return [];
  const terms = new Map<string, number>();
  problem.situations.forEach(({ expectedSnaps }, s) => {
    for (const [c, { explosive }] of problem.candidates.entries())
      terms.set(mixed(c, s), expectedSnaps * (explosive[s] ?? 0));
  });
  return [{ words: `at most ${most} explosive plays expected`, constraints: [{ terms, max: most }] }];
}
