import { StatsInputError } from './errors.ts';

/** Whether the total of an assignment is to be small or large. */
export const ASSIGNMENT_GOALS = ['minimize', 'maximize'] as const;

/** One of {@link ASSIGNMENT_GOALS}. */
export type AssignmentGoal = (typeof ASSIGNMENT_GOALS)[number];

/** The best pairing of rows with columns. */
export interface Assignment {
  /** Sum over the pairs made. */
  readonly total: number;
  /** The column of each row, -1 for a row left without. */
  readonly columnOfRow: readonly number[];
}

/**
 * Pairs rows with columns, each used at most once, so that as many permitted pairs as possible are made and, among
 * those pairings, the total is best. Exact.
 *
 * @param weights - one array per row, of equal lengths; Infinity (or minus Infinity) forbids a pair
 * @param goal - whether weights are costs or gains
 * @throws StatsInputError when the rows differ in length or a weight is NaN
 * @see Kuhn 1955, Naval Research Logistics Quarterly 2:83; shortest augmenting paths as in Jonker and Volgenant 1987
 * @example solveAssignment([[4, 1, 3], [2, 0, 5], [3, 2, 2]]) // total 5, columns 1 0 2
 */
export function solveAssignment(
  weights: readonly (readonly number[])[],
  goal: AssignmentGoal = 'minimize',
): Assignment {
  const columns = widthOf(weights);
  const costs = costsOf(weights, goal);
  const wide = weights.length <= columns;
  const partner = wide
    ? matchedColumns(costs, columns)
    : inverse(matchedColumns(turned(costs, columns), weights.length), weights.length);
  const columnOfRow = partner.map((j, i) => (j >= 0 && Number.isFinite(weights[i]?.[j]) ? j : -1));
  const total = columnOfRow.reduce((sum, j, i) => (j < 0 ? sum : sum + (weights[i]?.[j] as number)), 0);
  return { total, columnOfRow };
}

type Matrix = readonly (readonly number[])[];

function widthOf(weights: Matrix): number {
  const columns = weights[0]?.length ?? 0;
  if (weights.some((row) => row.length !== columns)) {
    throw new StatsInputError('solveAssignment requires rows of equal length');
  }
  if (weights.some((row) => row.some(Number.isNaN)))
    throw new StatsInputError('solveAssignment requires numbers, got NaN');
  return columns;
}

/** Costs from 0 up; a forbidden pair costs more than any set of permitted pairs. */
function costsOf(weights: Matrix, goal: AssignmentGoal): number[][] {
  const sign = goal === 'minimize' ? 1 : -1;
  const finite = weights
    .flat()
    .filter(Number.isFinite)
    .map((x) => sign * x);
  const least = finite.reduce((a, b) => Math.min(a, b), 0);
  const range = finite.reduce((a, b) => Math.max(a, b), 0) - least;
  const forbidden = (range + 1) * (weights.length + 1);
  return weights.map((row) => row.map((x) => (Number.isFinite(x) ? sign * x - least : forbidden)));
}

function turned(costs: Matrix, columns: number): number[][] {
  return Array.from({ length: columns }, (_, j) => costs.map((row) => row[j] as number));
}

function inverse(partner: readonly number[], size: number): number[] {
  const back = new Array<number>(size).fill(-1);
  partner.forEach((j, i) => {
    back[j] = i;
  });
  return back;
}

interface Search {
  readonly costs: Matrix;
  readonly columns: number;
  /** Prices that keep every reduced cost at 0 or above. */
  readonly rowPrice: Float64Array;
  readonly columnPrice: Float64Array;
  /** The row that holds each column, -1 for none; the last entry holds the row being placed. */
  readonly holder: Int32Array;
}

/** For a matrix with no more rows than columns: the column of each row in a cheapest full pairing. */
function matchedColumns(costs: Matrix, columns: number): number[] {
  const search: Search = {
    costs,
    columns,
    rowPrice: new Float64Array(costs.length),
    columnPrice: new Float64Array(columns + 1),
    holder: new Int32Array(columns + 1).fill(-1),
  };
  for (let row = 0; row < costs.length; row += 1) place(search, row);
  const partner = new Array<number>(costs.length).fill(-1);
  search.holder.subarray(0, columns).forEach((row, j) => {
    if (row >= 0) partner[row] = j;
  });
  return partner;
}

/** Finds the cheapest chain of moves that frees a column for the row, and makes the moves. */
function place(search: Search, row: number): void {
  const { columns, holder } = search;
  const reach = new Float64Array(columns).fill(Number.POSITIVE_INFINITY);
  const cameFrom = new Int32Array(columns).fill(columns);
  const done = new Uint8Array(columns + 1);
  holder[columns] = row;
  let column = columns;
  while ((holder[column] as number) >= 0) {
    done[column] = 1;
    const next = nearest(search, column, { reach, cameFrom, done });
    reprice(search, reach[next] as number, { reach, done });
    column = next;
  }
  while (column !== columns) {
    const previous = cameFrom[column] as number;
    holder[column] = holder[previous] as number;
    column = previous;
  }
}

interface Frontier {
  readonly reach: Float64Array;
  readonly cameFrom: Int32Array;
  readonly done: Uint8Array;
}

function nearest({ costs, columns, rowPrice, columnPrice, holder }: Search, from: number, frontier: Frontier): number {
  const { reach, cameFrom, done } = frontier;
  const row = holder[from] as number;
  let best = -1;
  for (let j = 0; j < columns; j += 1) {
    if (done[j]) continue;
    const reduced = (costs[row]?.[j] as number) - (rowPrice[row] as number) - (columnPrice[j] as number);
    if (reduced < (reach[j] as number)) {
      reach[j] = reduced;
      cameFrom[j] = from;
    }
    if (best < 0 || (reach[j] as number) < (reach[best] as number)) best = j;
  }
  return best;
}

function reprice(
  { columns, rowPrice, columnPrice, holder }: Search,
  step: number,
  frontier: Omit<Frontier, 'cameFrom'>,
): void {
  const { reach, done } = frontier;
  for (let j = 0; j <= columns; j += 1) {
    if (done[j]) {
      rowPrice[holder[j] as number] = (rowPrice[holder[j] as number] as number) + step;
      columnPrice[j] = (columnPrice[j] as number) - step;
    } else if (j < columns) {
      reach[j] = (reach[j] as number) - step;
    }
  }
}
