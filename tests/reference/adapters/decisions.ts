import { largestRemainder } from '../../../src/stats/apportion.ts';
import { solveAssignment } from '../../../src/stats/assignment.ts';
import { type BinaryConstraint, solveBinaryProgram } from '../../../src/stats/binary-program.ts';
import { solveMatrixGame } from '../../../src/stats/matrix-game.ts';
import type { Adapter } from '../check.ts';

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * (b[i] as number), 0);

interface WrittenConstraint {
  readonly coef: number[];
  readonly dir: '<=' | '>=' | '=' | '==';
  readonly rhs: number;
}

const constraint = ({ coef, dir, rhs }: WrittenConstraint): BinaryConstraint => ({
  coefficients: coef,
  direction: dir === '==' ? '=' : dir,
  limit: rhs,
});

const respects = (chosen: readonly number[], { coefficients, direction, limit }: BinaryConstraint) => {
  const gap = dot(coefficients, chosen) - limit;
  const near = 1e-9 * Math.max(1, Math.abs(limit));
  return direction === '<=' ? gap <= near : direction === '>=' ? gap >= -near : Math.abs(gap) <= near;
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
    const written: BinaryConstraint[] = constraints.map(constraint);
    const got = solveBinaryProgram({ values, constraints: written });
    if (!got.feasible) return { feasible: false };
    const proved =
      written.every((c) => respects(got.chosen, c)) && Math.abs(dot(values, got.chosen) - got.value) < 1e-9;
    return proved ? { feasible: true, objective: got.value, x: got.chosen } : {};
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
