import { StatsInputError } from './errors.ts';
import { type LinearConstraint, solveMixedProgram } from './mixed-program.ts';

/** The ways a weighted sum may be bounded. */
export const DIRECTIONS = ['<=', '>=', '='] as const;

/** One of {@link DIRECTIONS}. */
export type Direction = (typeof DIRECTIONS)[number];

/** A bound on the weighted sum of the chosen items. */
export interface BinaryConstraint {
  /** One factor per item. */
  readonly coefficients: readonly number[];
  readonly direction: Direction;
  readonly limit: number;
}

/** Which items to choose. */
export interface BinaryProgram {
  /** Worth of each item. */
  readonly values: readonly number[];
  readonly constraints: readonly BinaryConstraint[];
}

/** The best choice, or that there is none. */
export type BinarySolution =
  | {
      readonly feasible: true;
      /** Total worth of the chosen items. */
      readonly value: number;
      /** 1 for each chosen item, 0 for each other, in input order. */
      readonly chosen: readonly (0 | 1)[];
    }
  | { readonly feasible: false };

/**
 * Chooses the items of largest total worth that respect every constraint. The choice is exact.
 *
 * @throws StatsInputError when a constraint does not have one factor per item, or a number is not finite
 * @see {@link solveMixedProgram}
 */
export function solveBinaryProgram({ values, constraints }: BinaryProgram): BinarySolution {
  const solved = solveMixedProgram({
    maximize: byItem(values),
    constraints: constraints.map((constraint) => toLinear(constraint, values.length)),
    binaries: values.map((_, i) => nameOf(i)),
  });
  if (solved.status !== 'optimal') return { feasible: false };
  return {
    feasible: true,
    value: solved.value,
    chosen: values.map((_, i) => (solved.solution.get(nameOf(i)) ? 1 : 0)),
  };
}

function byItem(factors: readonly number[]): Map<string, number> {
  return new Map(factors.map((factor, i) => [nameOf(i), factor]));
}

function nameOf(item: number): string {
  return `x${item}`;
}

function toLinear({ coefficients, direction, limit }: BinaryConstraint, items: number): LinearConstraint {
  if (coefficients.length !== items) {
    throw new StatsInputError(`a constraint requires one factor per item, got ${coefficients.length} for ${items}`);
  }
  return { terms: byItem(coefficients), ...boundOf(direction, limit) };
}

function boundOf(direction: Direction, limit: number): Omit<LinearConstraint, 'terms'> {
  switch (direction) {
    case '<=':
      return { max: limit };
    case '>=':
      return { min: limit };
    case '=':
      return { equal: limit };
    default:
      return direction satisfies never;
  }
}
