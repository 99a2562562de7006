import { type LinearTerms, termsOf, type VariableName } from './linear-terms.ts';
import type { LinearConstraint, MixedProgram, MixedSolution } from './mixed-program.ts';

/** Solves a mixed 0-1 program to its proved optimum; null when the search was stopped before the proof. */
export type ExactSolver = <Name extends VariableName>(program: MixedProgram<Name>) => MixedSolution<Name> | null;

/**
 * Loads a solver for programs too large for the small one: HiGHS, by branch and cut with presolve. It runs without
 * threads and stops after a number of nodes, never after a time, so that the same program always ends the same way.
 *
 * @param wasm - path of the solver's own file, or its bytes; without it the package finds it
 * @see Huangfu and Hall 2018, Mathematical Programming Computation 10:119; the highs package
 */
export async function loadExactSolver(wasm?: string | Uint8Array): Promise<ExactSolver> {
  const { default: module } = await import('highs');
  // The package is typed for require, and imported its default is the loader itself.
  const load = module as unknown as typeof module.default;
  const highs = await load(settingsOf(wasm));
  return (program) => {
    const names = variableNames(program);
    const { Status, ObjectiveValue, Columns } = highs.solve(programText(program, names), OPTIONS);
    if (Status === 'Infeasible') return { status: 'infeasible' };
    if (Status === 'Unbounded') return { status: 'unbounded' };
    if (Status !== 'Optimal') return null;
    const whole = new Set(program.binaries);
    const solution = names.map((name, i) => {
      const value = Number(Columns[columnName(i)]?.Primal ?? 0);
      return [name, whole.has(name) ? Math.round(value) : value] as const;
    });
    return { status: 'optimal', value: ObjectiveValue, solution: new Map(solution) };
  };
}

function settingsOf(wasm: string | Uint8Array | undefined) {
  if (wasm === undefined) return {};
  return typeof wasm === 'string' ? { locateFile: () => wasm } : { wasmBinary: wasm };
}

/** Nodes after which the search stops; judgement: far more than 60 calls take. */
const OPTIONS = { mip_rel_gap: 1e-9, mip_abs_gap: 1e-8, mip_max_nodes: 20_000, output_flag: false } as const;

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
  return `Maximize\n obj: ${objective}\nSubject To\n${numbered}\nBinary\n${whole}\nEnd\n`;
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
