import { StatsInputError } from '../../stats/errors.ts';
import {
  type LinearConstraint,
  type MixedProgram,
  type MixedSolution,
  solveMixedProgram,
} from '../../stats/mixed-program.ts';

/** How far the numbers of a program are moved when the solver runs in circles on it; first not at all. Judgement. */
const NUDGES = [0, 1e-7, 1e-6];

/**
 * Solves a program. Where many bounds or many worths are equal the solver can run in circles; then every bound is
 * widened and every variable charged a hair, each another, which breaks the ties.
 *
 * @returns null when the solver gives up all the same
 */
export function solveNudged(program: MixedProgram): MixedSolution | null {
  for (const nudge of NUDGES) {
    const solved = solveOrNull(nudge === 0 ? program : nudged(program, nudge));
    if (solved) return solved;
  }
  return null;
}

function solveOrNull(program: MixedProgram): MixedSolution | null {
  try {
    return solveMixedProgram(program);
  } catch (error) {
    if (error instanceof StatsInputError) return null;
    throw error;
  }
}

function nudged({ maximize, constraints, ...rest }: MixedProgram, nudge: number): MixedProgram {
  const worth = new Map(maximize instanceof Map ? maximize : Object.entries(maximize));
  const names = new Set(
    constraints.flatMap(({ terms }) => [...(terms instanceof Map ? terms.keys() : Object.keys(terms))]),
  );
  [...names].forEach((name, i) => {
    worth.set(name, (worth.get(name) ?? 0) - nudge * uneven(i));
  });
  return { ...rest, maximize: worth, constraints: constraints.map((each, i) => widened(each, nudge * uneven(i))) };
}

function widened(constraint: LinearConstraint, by: number): LinearConstraint {
  const { min, max, equal } = constraint;
  if (equal !== undefined) return constraint;
  return {
    terms: constraint.terms,
    ...(min === undefined ? {} : { min: min - by }),
    ...(max === undefined ? {} : { max: max + by }),
  };
}

/** Numbers between 1 and 2 with no pattern the program could share: steps of the golden ratio. */
function uneven(i: number): number {
  return 1 + ((i * 0.6180339887498949) % 1);
}
