import { plainName } from '../../game/plain-name.ts';
import type { LinearConstraint, MixedProgram } from '../../stats/mixed-program.ts';
import { allPressures, type MenuCandidate, type MenuProblem } from './model.ts';
import { callsHere, groupsOf, namesOf, overCalls, type Term } from './program-names.ts';
import { readerConstraints, readerPrices } from './reader-limits.ts';
import { OWN_REPS, SHARED_REPS } from './reps.ts';

/** What a menu is chosen for: as few points given up as can be, or fit less the price of reps, giving up no more than so many. */
export type MenuAim = { readonly kind: 'points' } | { readonly kind: 'fit'; readonly mostGivenUp: number | null };

/** What a pressure costs that cannot be sent: more than any fit or points, so that as many are sent as limits allow. */
const SHORT_PRICE = 3;

/**
 * The choice of calls and of their mixes as one mixed program: variables are calls a game by candidate and mix, whether
 * a candidate is carried, and the reps that teach each path and coverage.
 */
export function menuProgram(problem: MenuProblem, aim: MenuAim): MixedProgram<number> {
  const names = namesOf(problem);
  const { candidates } = problem;
  const worth = aim.kind === 'points' ? keptTerms(problem) : [...fitTerms(problem), ...priceTerms(problem)];
  const maximize = [...worth, ...shortTerms(problem), ...readerPrices(problem)];
  const regret = aim.kind === 'points' || aim.mostGivenUp === null ? [] : regretConstraint(problem, aim.mostGivenUp);
  return {
    maximize,
    constraints: [
      ...mixConstraints(problem),
      ...carryConstraints(problem),
      ...repConstraints(problem),
      ...pathConstraints(problem),
      ...readerConstraints(problem),
      ...dutyConstraints(problem),
      ...regret,
    ],
    binaries: candidates.map((_, c) => names.carry(c)),
  };
}

function shortTerms(problem: MenuProblem): Term[] {
  const { short } = namesOf(problem);
  return problem.mixes.map((_, m) => [short(m), -SHORT_PRICE]);
}

/** The constraint that forbids carrying exactly this set again. */
export function otherSet({ candidates }: MenuProblem, set: readonly number[]): LinearConstraint<number> {
  const { carry } = namesOf({ candidates, mixes: { length: mixCount(candidates) } });
  const terms = candidates.map((_, c): Term => [carry(c), set.includes(c) ? 1 : -1]);
  return { terms, max: set.length - 1 };
}

/** Carried candidates of a solution, and their calls a game by mix. */
export function readSolution(problem: MenuProblem, solution: ReadonlyMap<number, number>) {
  const names = namesOf(problem);
  const set = problem.candidates.map((_, c) => c).filter((c) => (solution.get(names.carry(c)) ?? 0) > 0.5);
  const calls = set.map((c) => problem.mixes.map((_, m) => Math.max(0, solution.get(names.calls(c, m)) ?? 0)));
  return { set, calls };
}

function mixCount(candidates: readonly MenuCandidate[]): number {
  return candidates[0]?.fit.length ?? 0;
}

/** Every point not given up. */
function keptTerms(problem: MenuProblem): Term[] {
  return overCalls(problem, ({ givenUp }, m) => -(givenUp[m] as number));
}

function regretConstraint(problem: MenuProblem, most: number): LinearConstraint<number>[] {
  const terms = overCalls(problem, ({ givenUp }, m) => givenUp[m] as number);
  return terms.length === 0 ? [] : [{ terms, max: most }];
}

function fitTerms(problem: MenuProblem): Term[] {
  return overCalls(problem, ({ fit }, m) => fit[m] as number);
}

function priceTerms(problem: MenuProblem): Term[] {
  return repTerms(problem).map(([name, reps]) => [name, -problem.repPrice * reps]);
}

/** The reps of a menu: each call's own, each path's and each coverage's. */
function repTerms(problem: MenuProblem): Term[] {
  const names = namesOf(problem);
  return [
    ...problem.candidates.map(({ reps }, c): Term => [names.carry(c), OWN_REPS * reps]),
    ...groupsOf(problem, 'path').map((_, p): Term => [names.path(p), 1]),
    ...groupsOf(problem, 'coverage').map((_, v): Term => [names.coverage(v), 1]),
  ];
}

/** Every mix sends what the pressure rates say; an add-on is never an every-down call; no path reads a situation. */
function mixConstraints(problem: MenuProblem): LinearConstraint<number>[] {
  const { short } = namesOf(problem);
  const { addOnShare, pathShareHere } = problem.limits;
  return problem.mixes.flatMap(({ pressures, expectedSnaps }, m) => {
    const addOns = callsHere(problem, m, ({ call }) => call.family === 'add_on');
    const capped = pathShareHere !== null && pressures >= LEAST_READABLE ? groupsOf(problem, 'path') : [];
    return [
      { terms: [...callsHere(problem, m, () => true), [short(m), 1] as const], equal: pressures },
      ...closedCalls(problem, m),
      ...(addOnShare === null || addOns.length === 0 ? [] : [{ terms: addOns, max: addOnShare * expectedSnaps }]),
      ...capped.map((path) => ({
        terms: callsHere(problem, m, ({ call }) => call.path === path),
        max: (pathShareHere ?? 1) * pressures,
      })),
    ];
  });
}

/** No call is sent where they do what it gives up on purpose. */
function closedCalls(problem: MenuProblem, m: number): LinearConstraint<number>[] {
  const { calls } = namesOf(problem);
  return problem.candidates.flatMap(({ closed }, c) =>
    closed[m] ? [{ terms: [[calls(c, m), 1]] as const, max: 0 }] : [],
  );
}

/** Fewer pressures than this in a mix show no path. Judgment. */
const LEAST_READABLE = 1.5;

/** What is not carried is not called, and what is carried is called at least so often. */
function carryConstraints(problem: MenuProblem): LinearConstraint<number>[] {
  const names = namesOf(problem);
  const { leastCalls, pathShare } = problem.limits;
  const most = (pathShare ?? 1) * allPressures(problem);
  return problem.candidates.flatMap((_, c) => {
    const used = problem.mixes.map((__, m): Term => [names.calls(c, m), 1]);
    return [
      { terms: [...used, [names.carry(c), -leastCalls] as const], min: 0 },
      { terms: [...used, [names.carry(c), -most] as const], max: 0 },
    ];
  });
}

function repConstraints(problem: MenuProblem): LinearConstraint<number>[] {
  const names = namesOf(problem);
  const taught = (key: 'path' | 'coverage') =>
    groupsOf(problem, key).flatMap((word, g) =>
      problem.candidates.flatMap(({ call, reps }, c) =>
        call[key] === word
          ? [{ terms: [[names[key](g), 1] as const, [names.carry(c), -SHARED_REPS[key] * reps] as const], min: 0 }]
          : [],
      ),
    );
  const { reps } = problem.limits;
  return [
    ...taught('path'),
    ...taught('coverage'),
    ...(reps === null ? [] : [{ terms: repTerms(problem), max: reps }]),
  ];
}

/** No path takes more than its share of our pressures. */
function pathConstraints(problem: MenuProblem): LinearConstraint<number>[] {
  const { pathShare } = problem.limits;
  if (pathShare === null) return [];
  return groupsOf(problem, 'path').map((path) => ({
    terms: overCalls(problem, ({ call }) => Number(call.path === path)),
    max: pathShare * allPressures(problem),
  }));
}

/** How many calls, how many new ones, every theory, every must, and no more explosives than allowed. */
function dutyConstraints(problem: MenuProblem): LinearConstraint<number>[] {
  const { carry } = namesOf(problem);
  const { size, newCalls, theories, musts, explosives } = problem.limits;
  const carried = (keep: (candidate: MenuCandidate) => boolean) =>
    problem.candidates.flatMap((candidate, c): Term[] => (keep(candidate) ? [[carry(c), 1]] : []));
  const isMust = ({ call }: MenuCandidate) => musts.has(plainName(call.name));
  return [
    ...(size === null ? [] : [{ terms: carried(() => true), max: size }]),
    ...(newCalls === null
      ? []
      : [{ terms: carried((candidate) => candidate.isNew && !isMust(candidate)), max: newCalls }]),
    ...theories.map((theory) => ({ terms: carried((candidate) => candidate.theory === theory), min: 1 })),
    ...carried(isMust).map((term) => ({ terms: [term], min: 1 })),
    ...(explosives === null
      ? []
      : [
          {
            terms: overCalls(problem, (candidate, m) => candidate.explosives[m] as number),
            max: explosives - problem.baseExplosives,
          },
        ]),
  ];
}
