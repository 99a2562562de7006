import { type LinearConstraint, type MixedSolution, solveMixedProgram } from '../stats/mixed-program.ts';
import type { MenuLimit } from './weekly-menu-limits.ts';
import type { MenuProblem } from './weekly-menu-problem.ts';
import { carry, mixed, pressures, worst } from './weekly-menu-variables.ts';

/** The chosen calls and how they are mixed. */
export interface ChosenMenu {
  readonly value: number;
  readonly worstValue: number;
  readonly objective: number;
  /** Indices into the candidates. */
  readonly carried: readonly number[];
  /** `mix[situation][candidate]`: share of that situation's snaps. */
  readonly mix: readonly (readonly number[])[];
}

/** A carried call is expected to be called at least this often, or it is not worth its repetitions. Judgement. */
const FEWEST_CALLS = 1;

/**
 * The best menu under the limits, exactly, or null when no menu meets them. `without` names candidate sets that may not
 * be chosen again (for the next-best menu).
 */
export function solveMenu(
  problem: MenuProblem,
  limits: readonly MenuLimit[],
  without: readonly (readonly number[])[] = [],
): ChosenMenu | null {
  const constraints = [
    ...structure(problem),
    ...limits.flatMap((limit) => limit.constraints),
    ...without.map((set) => notAgain(problem, set)),
  ];
  const solved = solveMixedProgram({ maximize: objective(problem), constraints, binaries: binaries(problem) });
  return solved.status === 'optimal' ? readSolution(problem, solved) : null;
}

/** Worst-case values are shifted by this floor so that the program's variables stay at or above zero. */
function floorOf(problem: MenuProblem): number {
  return problem.candidates.reduce((least, { byAnswer }) => Math.min(least, ...byAnswer.flat()), 0);
}

function objective(problem: MenuProblem): Map<string, number> {
  const { trust } = problem.settings;
  const terms = new Map<string, number>();
  problem.situations.forEach(({ expectedSnaps }, s) => {
    for (const [c, { value }] of problem.candidates.entries())
      terms.set(mixed(c, s), trust * expectedSnaps * (value[s] ?? 0));
    terms.set(worst(s), (1 - trust) * expectedSnaps);
  });
  return terms;
}

function binaries(problem: MenuProblem): string[] {
  return pressures(problem).map(carry);
}

/** What makes it a menu: a mix of at most one (the rest is the plain base, worth 0), of carried calls only. */
function structure(problem: MenuProblem): LinearConstraint[] {
  const floor = floorOf(problem);
  const constraints: LinearConstraint[] = [];
  problem.situations.forEach((_, s) => {
    constraints.push({ terms: new Map(problem.candidates.map((__, c) => [mixed(c, s), 1])), max: 1 });
    for (const c of pressures(problem)) constraints.push({ terms: { [mixed(c, s)]: 1, [carry(c)]: -1 }, max: 0 });
    constraints.push(...worstAnswers(problem, s, floor));
  });
  const snaps = (c: number) => problem.situations.map(({ expectedSnaps }, s) => [mixed(c, s), expectedSnaps] as const);
  for (const c of pressures(problem))
    constraints.push({ terms: new Map([...snaps(c), [carry(c), -FEWEST_CALLS]]), min: 0 });
  return constraints;
}

function worstAnswers(problem: MenuProblem, s: number, floor: number): LinearConstraint[] {
  const answers = Math.max(...problem.candidates.map(({ byAnswer }) => byAnswer[s]?.length ?? 0));
  return Array.from({ length: answers }, (_, a) => {
    const terms = new Map(problem.candidates.map(({ byAnswer }, c) => [mixed(c, s), -(byAnswer[s]?.[a] ?? 0)]));
    terms.set(worst(s), 1);
    return { terms, max: -floor };
  });
}

function notAgain(problem: MenuProblem, set: readonly number[]): LinearConstraint {
  const inside = new Set(set);
  const terms = new Map(pressures(problem).map((c) => [carry(c), inside.has(c) ? -1 : 1]));
  return { terms, min: 1 - pressures(problem).filter((c) => inside.has(c)).length };
}

function readSolution(problem: MenuProblem, solved: Extract<MixedSolution, { status: 'optimal' }>): ChosenMenu {
  const of = (name: string) => solved.solution.get(name) ?? 0;
  const mix = problem.situations.map((_, s) => problem.candidates.map((__, c) => of(mixed(c, s))));
  const snaps = (s: number) => problem.situations[s]?.expectedSnaps ?? 0;
  const value = sum(
    mix.map((shares, s) => snaps(s) * sum(shares.map((share, c) => share * (problem.candidates[c]?.value[s] ?? 0)))),
  );
  const worstValue = sum(mix.map((shares, s) => snaps(s) * worstOf(problem, shares, s)));
  const carried = pressures(problem).filter((c) => of(carry(c)) > 0.5);
  const { trust } = problem.settings;
  return { value, worstValue, objective: trust * value + (1 - trust) * worstValue, carried, mix };
}

function worstOf(problem: MenuProblem, shares: readonly number[], s: number): number {
  const answers = Math.max(...problem.candidates.map(({ byAnswer }) => byAnswer[s]?.length ?? 0));
  const worths = Array.from({ length: answers }, (_, a) =>
    sum(shares.map((share, c) => share * (problem.candidates[c]?.byAnswer[s]?.[a] ?? 0))),
  );
  return worths.length === 0 ? 0 : Math.min(...worths);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
