import lpSolver from 'javascript-lp-solver';

interface SecondModel {
  readonly constraints: Record<string, { readonly min?: number; readonly max?: number; readonly equal?: number }>;
  readonly variables: Record<string, Record<string, number>>;
  readonly ints?: Record<string, 1>;
}

/** Maximises `total` with a second, independent solver. Its type declarations do not match its ES module. */
export function solvedElsewhere(model: SecondModel): { readonly feasible: boolean; readonly result: number } {
  const solver = lpSolver as unknown as { Solve(model: unknown): { feasible: boolean; result: number } };
  return solver.Solve({ optimize: 'total', opType: 'max', ...model });
}
