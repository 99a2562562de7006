import { StatsInputError } from '../../stats/errors.ts';
import { termsOf, type VariableName } from '../../stats/linear-terms.ts';
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
export function solveNudged<Name extends VariableName>(program: MixedProgram<Name>): MixedSolution<Name> | null {
  for (const nudge of NUDGES) {
    const solved = solveOrNull(nudge === 0 ? program : nudged(program, nudge));
    if (solved) return solved;
  }
  return null;
}

function solveOrNull<Name extends VariableName>(program: MixedProgram<Name>): MixedSolution<Name> | null {
  try {
    return solveMixedProgram(program);
  } catch (error) {
    if (error instanceof StatsInputError) return null;
    throw error;
  }
}

function nudged<Name extends VariableName>(program: MixedProgram<Name>, nudge: number): MixedProgram<Name> {
  const { maximize, constraints, ...rest } = program;
  const worth = new Map(termsOf(maximize));
  const names = new Set(constraints.flatMap(({ terms }) => Array.from(termsOf(terms), ([name]) => name)));
  [...names].forEach((name, i) => {
    worth.set(name, (worth.get(name) ?? 0) - nudge * uneven(i));
  });
  return { ...rest, maximize: worth, constraints: constraints.map((each, i) => widened(each, nudge * uneven(i))) };
}

function widened<Name extends VariableName>(constraint: LinearConstraint<Name>, by: number): LinearConstraint<Name> {
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
