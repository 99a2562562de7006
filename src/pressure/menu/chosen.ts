import type { ExactSolver } from '../../stats/exact-solver.ts';
import type { LinearConstraint } from '../../stats/mixed-program.ts';
import type { MenuCandidate, MenuProblem } from './model.ts';
import { type MenuAim, menuProgram, readSolution } from './program.ts';
import { readerPrices } from './reader-limits.ts';
import { repsOfSet } from './reps.ts';

/** A set of calls with its mix and what it is worth. */
export interface ChosenMenu {
  /** Candidates carried, ascending. */
  readonly set: readonly number[];
  /** Calls a game of the i-th carried candidate, by mix. */
  readonly calls: readonly (readonly number[])[];
  /** Points saved a game against always playing the base. */
  readonly points: number;
  /** Points a game given up where points tell calls apart. */
  readonly givenUp: number;
  /** Snaps a game on which the called theory is right less those on which it is wrong, as the menu counts them. */
  readonly fit: number;
  readonly reps: number;
  /** Fit less the price of the reps. */
  readonly worth: number;
  /** Price of what a reader of our paths gets beyond the limits, at least 0; menus are compared by worth less this. */
  readonly read: number;
}

/** What came of a choice: the best menu there is when proved, or one that no other beats by more than `gap`. */
export interface Choice {
  readonly menu: ChosenMenu;
  readonly proved: boolean;
  readonly gap: number;
}

/** What a choice is made with. */
export interface ChoiceTask {
  readonly problem: MenuProblem;
  readonly aim: MenuAim;
  /** Further constraints, such as sets that may not be chosen again. */
  readonly also?: readonly LinearConstraint<number>[];
}

/** The best menu for an aim; null when no menu keeps the limits. */
export function choose({ problem, aim, also = [] }: ChoiceTask, exact: ExactSolver): Choice | null {
  const program = menuProgram(problem, aim);
  const solved = exact({ ...program, constraints: [...program.constraints, ...also] });
  if (solved.status === 'infeasible' || solved.status === 'unbounded') return null;
  const { set, calls } = readSolution(problem, solved.solution);
  const read = readerPrices(problem).reduce((sum, [name, price]) => sum - price * (solved.solution.get(name) ?? 0), 0);
  const menu = { ...worthOf(problem, set, calls), read };
  const gap = solved.status === 'optimal' ? 0 : Math.max(0, solved.bound - solved.value);
  return { menu, proved: solved.status === 'optimal', gap };
}

/** What a set of calls with a mix is worth. */
function worthOf(
  problem: MenuProblem,
  set: readonly number[],
  calls: readonly (readonly number[])[],
): Omit<ChosenMenu, 'read'> {
  const carried = set.map((c) => problem.candidates[c] as MenuCandidate);
  const over = (of: (candidate: MenuCandidate, m: number) => number) =>
    carried.reduce(
      (sum, candidate, i) => sum + (calls[i] ?? []).reduce((own, times, m) => own + times * of(candidate, m), 0),
      0,
    );
  const points = over((candidate, m) => candidate.points[m] as number);
  const givenUp = over((candidate, m) => candidate.givenUp[m] as number);
  const fit = over((candidate, m) => candidate.fit[m] as number);
  const reps = repsOfSet(carried);
  return { set, calls, points, givenUp, fit, reps, worth: fit - problem.repPrice * reps };
}

/** Expected calls a game of the i-th carried candidate. */
export function callsAGame({ calls }: Pick<ChosenMenu, 'calls'>, i: number): number {
  return (calls[i] ?? []).reduce((sum, times) => sum + times, 0);
}

/** Explosive plays a game expected under a menu. */
export function expectedExplosives(problem: MenuProblem, { set, calls }: ChosenMenu): number {
  return set.reduce((sum, c, i) => {
    const own = (problem.candidates[c] as MenuCandidate).explosives;
    return sum + (calls[i] ?? []).reduce((total, times, m) => total + times * (own[m] as number), 0);
  }, problem.baseExplosives);
}
