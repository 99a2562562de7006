import type { LinearTerms, VariableName } from './linear-terms.ts';

/** A bound on a weighted sum of variables. At least one of `min`, `max` and `equal` is given; `equal` wins. */
export interface LinearConstraint<Name extends VariableName = string> {
  readonly terms: LinearTerms<Name>;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly equal?: number | undefined;
}

/** A linear program over variables of at least 0, some of which may only be 0 or 1. */
export interface MixedProgram<Name extends VariableName = string> {
  readonly maximize: LinearTerms<Name>;
  readonly constraints: readonly LinearConstraint<Name>[];
  /** Names of the variables that are 0 or 1. */
  readonly binaries?: Iterable<Name> | undefined;
}

/** What became of a program. */
export type MixedSolution<Name extends VariableName = string> =
  | {
      readonly status: 'optimal';
      /** The largest value of the objective. */
      readonly value: number;
      /** One entry per variable of the program, zeros included; binaries are exactly 0 or 1. */
      readonly solution: ReadonlyMap<Name, number>;
    }
  | { readonly status: 'infeasible' }
  | { readonly status: 'unbounded' };
