import { type Constraint, solve } from 'yalps';
import { StatsInputError } from './errors.ts';
import { type LinearTerms, termsOf, type VariableName } from './linear-terms.ts';

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

/**
 * Solves a mixed 0-1 linear program to its exact optimum (up to 1e-8 in the objective) by branch and cut.
 *
 * @throws StatsInputError when a number is not finite, a constraint has no bound, or the search does not end
 * @see the yalps package
 * @example
 * solveMixedProgram({
 *   maximize: { a: 3, b: 2 },
 *   constraints: [{ terms: { a: 1, b: 1 }, max: 1.5 }],
 *   binaries: ['a'],
 * }) // optimal, 4: a = 1, b = 0.5
 */
export function solveMixedProgram<Name extends VariableName = string>({
  maximize,
  constraints,
  binaries = [],
}: MixedProgram<Name>): MixedSolution<Name> {
  const whole = new Set(binaries);
  const columns = columnsByVariable(maximize, constraints);
  for (const name of whole) columnOf(columns, name);
  const model = {
    direction: 'maximize' as const,
    objective: OBJECTIVE,
    constraints: constraints.map((constraint, row) => [row, boundsOf(constraint)] as const),
    variables: columns,
    binaries: whole,
  };
  return toSolution(solve<Name, number>(model, SOLVER_OPTIONS), maximize, whole);
}

/** The objective's key among the rows, which are numbered from 0. */
const OBJECTIVE = -1;

/** No gap is tolerated; the limit on branches only turns an endless search into an error. */
const SOLVER_OPTIONS = {
  tolerance: 0,
  precision: 1e-9,
  maxPivots: 100_000,
  maxIterations: 1_000_000,
  checkCycles: true,
  includeZeroVariables: true,
};

/** The rows a variable stands in, each with its factor there. */
type Columns<Name> = Map<Name, [row: number, factor: number][]>;

function columnsByVariable<Name extends VariableName>(
  maximize: LinearTerms<Name>,
  constraints: readonly LinearConstraint<Name>[],
): Columns<Name> {
  const columns: Columns<Name> = new Map();
  addRow(columns, maximize, OBJECTIVE);
  for (const [row, { terms }] of constraints.entries()) addRow(columns, terms, row);
  return columns;
}

function addRow<Name extends VariableName>(columns: Columns<Name>, terms: LinearTerms<Name>, row: number): void {
  for (const [name, factor] of termsOf(terms)) {
    if (!Number.isFinite(factor)) requireFinite(factor, `the factor of ${name}`);
    columnOf(columns, name).push([row, factor]);
  }
}

function columnOf<Name>(columns: Columns<Name>, name: Name): [number, number][] {
  let column = columns.get(name);
  if (column === undefined) {
    column = [];
    columns.set(name, column);
  }
  return column;
}

function boundsOf(constraint: Bounds): Constraint {
  const bounds: { min?: number; max?: number; equal?: number } = {};
  for (const which of BOUNDS) {
    const bound = constraint[which];
    if (bound === undefined) continue;
    requireFinite(bound, `the ${which} of a constraint`);
    bounds[which] = bound;
  }
  if (Object.keys(bounds).length === 0) throw new StatsInputError('a constraint requires min, max or equal');
  return bounds;
}

type Bounds = Pick<LinearConstraint, 'min' | 'max' | 'equal'>;

const BOUNDS = ['min', 'max', 'equal'] as const;

function requireFinite(value: number, what: string): void {
  if (!Number.isFinite(value)) throw new StatsInputError(`${what} must be a finite number, got ${value}`);
}

function toSolution<Name extends VariableName>(
  solved: ReturnType<typeof solve<Name, number>>,
  maximize: LinearTerms<Name>,
  whole: ReadonlySet<Name>,
): MixedSolution<Name> {
  const { status } = solved;
  if (status === 'infeasible' || status === 'unbounded') return { status };
  if (status !== 'optimal') throw new StatsInputError(`solveMixedProgram found no end to its search (${status})`);
  const solution = new Map(solved.variables.map(([name, x]) => [name, whole.has(name) ? Math.round(x) : x]));
  let value = 0;
  for (const [name, factor] of termsOf(maximize)) value += factor * (solution.get(name) ?? 0);
  return { status, value, solution };
}
