import { solve } from 'yalps';
import { StatsInputError } from './errors.ts';

/** Optimal play of a two-person zero-sum game. */
export interface GameSolution {
  /** What the row player can secure and the column player can hold him to. */
  readonly value: number;
  /** Share of each row in an optimal mix; other mixes may be as good. */
  readonly row: readonly number[];
  /** Share of each column in an optimal mix; other mixes may be as good. */
  readonly col: readonly number[];
}

/**
 * Value and optimal mixes of a zero-sum game, by two linear programs. The result is checked from both sides: what the
 * row mix secures and what the column mix concedes must agree.
 *
 * @param payoff - payoff to the row player, one array per row; at least one row and column
 * @throws StatsInputError when the rows differ in length, a payoff is not finite, or the two sides disagree
 * @see von Neumann 1928; Dantzig 1951 for the linear program
 * @example solveMatrixGame([[-5, 5], [10, 0]]) // value 2.5, row 1/2 1/2, column 1/4 3/4
 */
export function solveMatrixGame(payoff: readonly (readonly number[])[]): GameSolution {
  const { least, range, columns } = shapeOf(payoff);
  // Every payoff between 1 and 2: both programs are then bounded and feasible whatever the units were.
  const scaled = payoff.map((line) => line.map((x) => 1 + (range === 0 ? 0 : (x - least) / range)));
  const turned = Array.from({ length: columns }, (_, j) => scaled.map((line) => line[j] as number));
  const row = mixOf(turned, 'min');
  const col = mixOf(scaled, 'max');
  const secured = Math.min(...turned.map((line) => expected(line, row)));
  const conceded = Math.max(...scaled.map((line) => expected(line, col)));
  if (!(Math.abs(conceded - secured) <= AGREEMENT)) {
    throw new StatsInputError(
      `solveMatrixGame found no common value, got ${secured} and ${conceded} on a scale of 1 to 2`,
    );
  }
  return { value: least + range * ((secured + conceded) / 2 - 1), row, col };
}

const AGREEMENT = 1e-7; // judgment: of the range of payoffs

function shapeOf(payoff: readonly (readonly number[])[]) {
  const columns = payoff[0]?.length ?? 0;
  if (columns === 0) throw new StatsInputError('solveMatrixGame requires at least one row and one column');
  if (payoff.some((line) => line.length !== columns)) {
    throw new StatsInputError('solveMatrixGame requires rows of equal length');
  }
  const all = payoff.flat();
  const wrong = all.find((x) => !Number.isFinite(x));
  if (wrong !== undefined) throw new StatsInputError(`solveMatrixGame requires finite payoffs, got ${wrong}`);
  const least = Math.min(...all);
  return { least, range: Math.max(...all) - least, columns };
}

/**
 * The mix over a matrix's columns that bounds every line by the same value: `max` finds the largest sum of weights with
 * every line at most 1, `min` the smallest with every line at least 1. Weights over their sum are the mix.
 */
function mixOf(lines: readonly (readonly number[])[], bound: 'min' | 'max'): number[] {
  const count = lines[0]?.length ?? 0;
  const solved = solve<number, number>(
    {
      direction: bound === 'max' ? 'maximize' : 'minimize',
      objective: -1,
      constraints: lines.map((_, i) => [i, { [bound]: 1 }] as const),
      variables: Array.from({ length: count }, (_, j) => [j, columnOf(lines, j)] as const),
    },
    { precision: 1e-11, maxPivots: 100_000, checkCycles: true, includeZeroVariables: true },
  );
  if (solved.status !== 'optimal') throw new StatsInputError(`solveMatrixGame found no mix (${solved.status})`);
  const total = solved.variables.reduce((sum, [, weight]) => sum + weight, 0);
  return solved.variables.map(([, weight]) => weight / total);
}

function columnOf(lines: readonly (readonly number[])[], j: number): (readonly [number, number])[] {
  return [[-1, 1], ...lines.map((line, i) => [i, line[j] as number] as const)];
}

function expected(line: readonly number[], mix: readonly number[]): number {
  return line.reduce((sum, x, i) => sum + x * (mix[i] as number), 0);
}
