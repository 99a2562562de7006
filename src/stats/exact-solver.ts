import { type LinearTerms, termsOf, type VariableName } from './linear-terms.ts';
import type { LinearConstraint, MixedProgram, MixedSolution } from './mixed-program.ts';

/** The best solution found when a search was stopped before the proof; no solution is worth more than `bound`. */
export interface StoppedSolution<Name extends VariableName> {
  readonly status: 'stopped';
  readonly value: number;
  readonly bound: number;
  readonly solution: ReadonlyMap<Name, number>;
}

/** Solves a mixed 0-1 program to its proved optimum, or as far as its nodes go. */
export type ExactSolver = <Name extends VariableName>(
  program: MixedProgram<Name>,
) => MixedSolution<Name> | StoppedSolution<Name>;

/**
 * Loads the solver: HiGHS, by branch and cut with presolve. It runs without
 * threads and stops after a number of nodes, never after a time, so that the same program always ends the same way.
 *
 * @param wasm - path or address of the solver's own file; without it the package finds it
 * @see Huangfu and Hall 2018, Mathematical Programming Computation 10:119; the highs package
 */
export async function loadExactSolver(wasm?: string): Promise<ExactSolver> {
  const { default: module } = await import('highs');
  // The package is typed for require, and imported its default is the loader itself.
  const load = module as unknown as typeof module.default;
  const highs = await load(wasm === undefined ? {} : { locateFile: () => wasm });
  const run = <Name extends VariableName>(program: MixedProgram<Name>) => {
    const names = variableNames(program);
    const { Status, ObjectiveValue, Columns } = highs.solve(programText(program, names), OPTIONS);
    const whole = new Set(program.binaries);
    const solution = names.map((name, i) => {
      const column = Columns[columnName(i)];
      const value = column && 'Primal' in column ? Number(column.Primal) : 0;
      return [name, whole.has(name) ? Math.round(value) : value] as const;
    });
    return { status: Status, value: ObjectiveValue, solution: new Map<Name, number>(solution) };
  };
  return (program) => {
    const { status, value, solution } = run(program);
    if (status === 'Infeasible') return { status: 'infeasible' };
    if (status === 'Unbounded') return { status: 'unbounded' };
    if (status === 'Optimal') return { status: 'optimal', value, solution };
    return { status: 'stopped', value, bound: run({ ...program, binaries: [] }).value, solution };
  };
}

/**
 * An optimum is proved to a thousandth of what is maximized. Nodes after which the search stops: judgment, far more than
 * 60 calls take. The searches for a first solution at the root cost more than they save on a menu's programs: without
 * them six programs of the demo took a third of the time and came to the same optima. So do trying out every branch often
 * before it is trusted, and cuts below the root: 62 programs of 17 to 40 calls took a seventh less without.
 */
const OPTIONS = {
  mip_rel_gap: 1e-6,
  mip_abs_gap: 1e-3,
  mip_max_nodes: 20_000,
  mip_heuristic_run_feasibility_jump: false,
  mip_heuristic_run_rens: false,
  mip_heuristic_run_rins: false,
  mip_heuristic_run_root_reduced_cost: false,
  mip_pscost_minreliable: 2,
  mip_allow_cut_separation_at_nodes: false,
  output_flag: false,
} as const;

function variableNames<Name extends VariableName>(program: MixedProgram<Name>): Name[] {
  const { maximize, constraints, binaries = [] } = program;
  const names = new Set(binaries);
  for (const terms of [maximize, ...constraints.map((constraint) => constraint.terms)]) {
    for (const [name] of termsOf(terms)) names.add(name);
  }
  return [...names];
}

/** A program in the LP text format, with numbered variables; lines stay short, for readers cut long ones. */
function programText<Name extends VariableName>(program: MixedProgram<Name>, names: readonly Name[]): string {
  const { maximize, constraints, binaries = [] } = program;
  const columns = new Map(names.map((name, i) => [name, columnName(i)]));
  const rows = constraints.flatMap((constraint) => rowTexts(constraint, columns));
  const objective = sumText(maximize, columns);
  const whole = [...binaries].map((name) => columns.get(name)).join('\n');
  const numbered = rows.map((row, i) => ` r${i}: ${row}`).join('\n');
  const binary = whole === '' ? '' : `Binary\n${whole}\n`;
  return `Maximize\n obj: ${objective}\nSubject To\n${numbered}\n${binary}End\n`;
}

function rowTexts<Name extends VariableName>(
  { terms, min, max, equal }: LinearConstraint<Name>,
  columns: ReadonlyMap<Name, string>,
): string[] {
  const sum = sumText(terms, columns);
  if (sum === '') return [];
  if (equal !== undefined) return [`${sum}\n = ${equal}`];
  return [...(min === undefined ? [] : [`${sum}\n >= ${min}`]), ...(max === undefined ? [] : [`${sum}\n <= ${max}`])];
}

function sumText<Name extends VariableName>(terms: LinearTerms<Name>, columns: ReadonlyMap<Name, string>): string {
  return [...termsOf(terms)]
    .filter(([, factor]) => factor !== 0)
    .map(([name, factor]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${columns.get(name)}`)
    .join('\n ');
}

function columnName(i: number): string {
  return `x${i}`;
}
