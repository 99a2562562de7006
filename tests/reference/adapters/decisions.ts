import { largestRemainder } from '../../../src/stats/apportion.ts';
import { solveAssignment } from '../../../src/stats/assignment.ts';
import { loadExactSolver } from '../../../src/stats/exact-solver.ts';
import { solveMatrixGame } from '../../../src/stats/matrix-game.ts';
import type { Adapter } from '../check.ts';

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * (b[i] as number), 0);

interface WrittenConstraint {
  readonly coef: number[];
  readonly dir: '<=' | '>=' | '=' | '==';
  readonly rhs: number;
}

const solveExactly = await loadExactSolver();

/** A written constraint over numbered items. */
const linear = ({ coef, dir, rhs }: WrittenConstraint) => ({
  terms: coef.map((factor, i) => [i, factor] as const),
  ...(dir === '<=' ? { max: rhs } : dir === '>=' ? { min: rhs } : { equal: rhs }),
});

const respects = (chosen: readonly number[], { coef, dir, rhs }: WrittenConstraint) => {
  const gap = dot(coef, chosen) - rhs;
  const near = 1e-9 * Math.max(1, Math.abs(rhs));
  return dir === '<=' ? gap <= near : dir === '>=' ? gap >= -near : Math.abs(gap) <= near;
};

/** Games, choices, pairings and shares of seats. Each answer is proved from its own parts before it is handed on. */
export const DECISION_ADAPTERS: Record<string, Adapter> = {
  'game.zero_sum': ({ payoff_to_row }) => {
    const { value, row, col } = solveMatrixGame(payoff_to_row);
    const secured = Math.min(
      ...payoff_to_row[0].map((_: number, j: number) =>
        dot(
          row,
          payoff_to_row.map((line: number[]) => line[j]),
        ),
      ),
    );
    const conceded = Math.max(...payoff_to_row.map((line: number[]) => dot(line, col)));
    const proved =
      Math.max(Math.abs(secured - value), Math.abs(conceded - value)) <= 1e-6 * Math.max(1, Math.abs(value));
    return proved ? { value, row, col } : {};
  },
  'ilp.binary_max': ({ values, constraints }) => {
    const written: WrittenConstraint[] = constraints;
    const items = values.map((_: number, i: number) => i);
    const got = solveExactly<number>({
      maximize: values.map((value: number, i: number) => [i, value] as const),
      constraints: written.map(linear),
      binaries: items,
    });
    if (got.status !== 'optimal') return { feasible: false };
    const chosen: number[] = items.map((i: number) => got.solution.get(i) ?? 0);
    const proved = written.every((c) => respects(chosen, c)) && Math.abs(dot(values, chosen) - got.value) < 1e-6;
    return proved ? { feasible: true, objective: dot(values, chosen), x: chosen } : {};
  },
  'apportion.largest_remainder': ({ weights, seats }) => ({ seats: largestRemainder(weights, seats) }),
  'assign.bipartite': ({ matrix, maximize }) => {
    const { total, columnOfRow } = solveAssignment(matrix, maximize ? 'maximize' : 'minimize');
    const made = columnOfRow.filter((j) => j >= 0);
    const sum = columnOfRow.reduce((s, j, i) => (j < 0 ? s : s + matrix[i][j]), 0);
    const proved = new Set(made).size === made.length && Math.abs(sum - total) < 1e-9;
    return proved ? { total, col_of_row: columnOfRow } : {};
  },
};
