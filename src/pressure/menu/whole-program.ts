import type { LinearConstraint, MixedProgram } from '../../stats/mixed-program.ts';
import { lowest, mixLimits, mixObjective, worstConstraints } from './mix.ts';
import { mixNames } from './mix-names.ts';
import type { MenuCandidate, MenuProblem } from './model.ts';
import { repParts } from './repetitions.ts';

/** The whole choice as one program. */
export interface WholeProgram {
  readonly program: MixedProgram<number>;
  /** What to add to the program's value for points a game. */
  readonly offset: number;
}

/**
 * Which calls to carry and how to mix them, as one mixed 0-1 program: the mix of all candidates with every limit on it,
 * a share only for a call that is carried, and the limits on the set. Its optimum is the best menu.
 */
export function wholeProgram(problem: MenuProblem): WholeProgram {
  const { candidates, situations, limits } = problem;
  const all = candidates.map((_, c) => c);
  const shift = lowest(problem, all);
  const snaps = situations.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0);
  const program = {
    maximize: mixObjective(problem, all),
    constraints: [
      ...mixLimits(problem, all),
      ...worstConstraints(problem, all, shift),
      ...carriedShares(problem),
      ...setLimits(problem),
    ],
    binaries: all.map(mixNames(problem).carry),
  };
  return { program, offset: (1 - limits.trust) * snaps * shift };
}

/** The candidates a solution carries, ascending. */
export function carriedIn(problem: MenuProblem, solution: ReadonlyMap<number, number>): number[] {
  const { carry } = mixNames(problem);
  return problem.candidates.flatMap((_, c) => ((solution.get(carry(c)) ?? 0) > 0.5 ? [c] : []));
}

/** A call has shares only when it is carried, and then enough of them. */
function carriedShares(problem: MenuProblem): LinearConstraint<number>[] {
  const { candidates, situations, limits } = problem;
  const { share, carry } = mixNames(problem);
  return candidates.flatMap((_, c) => [
    ...situations.map((__, s) => ({
      terms: [[share(c, s), 1] as const, [carry(c), -limits.mostPressure] as const],
      max: 0,
    })),
    {
      terms: [
        ...situations.map(({ expectedSnaps }, s) => [share(c, s), expectedSnaps] as const),
        [carry(c), -limits.leastCalls] as const,
      ],
      min: 0,
    },
  ]);
}

function setLimits(problem: MenuProblem): LinearConstraint<number>[] {
  const { candidates, limits } = problem;
  const { carry } = mixNames(problem);
  const carried = (fits: (candidate: MenuCandidate) => boolean) =>
    candidates.flatMap((candidate, c) => (fits(candidate) ? [[carry(c), 1] as const] : []));
  return [
    { terms: carried(() => true), max: limits.size },
    ...limits.theories.map((theory) => ({ terms: carried((candidate) => candidate.theory === theory), min: 1 })),
    ...limits.musts.map((c) => ({ terms: [[carry(c), 1] as const], min: 1 })),
    ...repLimits(problem),
  ];
}

/** Repetitions: each call's own, and for every path and coverage those of its dearest carried call, once. */
function repLimits(problem: MenuProblem): LinearConstraint<number>[] {
  const { candidates, limits } = problem;
  const names = mixNames(problem);
  const shared = (['path', 'coverage'] as const).flatMap((key) =>
    candidates.map((candidate, c) => ({ name: names[key](candidate[key]), c, reps: repParts(candidate.reps)[key] })),
  );
  const dearest = shared.map(({ name, c, reps }) => ({
    terms: [[name, 1] as const, [names.carry(c), -reps] as const],
    min: 0,
  }));
  const own = candidates.map(({ reps }, c) => [names.carry(c), repParts(reps).own] as const);
  const once = shared.map(({ name }) => [name, 1] as const);
  return [...dearest, { terms: new Map([...own, ...once]), max: limits.reps }];
}
