import { logGamma } from './beta.ts';
import { type ContingencyTable, marginsOf, transposed } from './contingency-table.ts';

/**
 * The probability, over all tables with the margins of the given one, of those no more likely than it.
 *
 * Columns are filled one by one. The last two are not filled for every way of filling the others: what they can hold
 * depends only on what is left of each row, so their tables are listed once for each such rest and looked up.
 *
 * @param table - whole counts, no empty row or column
 * @param slack - relative difference within which two tables count as equally likely
 * @see Freeman and Halton 1951, Biometrika 38:141
 */
export function exactTableP(table: ContingencyTable, slack: number): number {
  const { rows, columns } = marginsOf(oriented(table));
  const ordered = [...columns].sort((a, b) => a - b);
  const constant = [...rows, ...columns].reduce((sum, n) => sum + logFactorial(n), 0);
  const all = rows.reduce((sum, n) => sum + n, 0);
  const observed = table.flat().reduce((sum, n) => sum - logFactorial(n), 0);
  const search: Search = { columns: ordered, limit: observed + slack, rests: new Map() };
  return Math.min(1, Math.exp(constant - logFactorial(all)) * unlikely(search, rows, { column: 0, log: 0 }));
}

/**
 * Rough number of steps {@link exactTableP} takes.
 *
 * @param table - whole counts, no empty row or column
 */
export function exactTableWork(table: ContingencyTable): number {
  return Math.min(work(table), work(transposed(table)));
}

function oriented(table: ContingencyTable): ContingencyTable {
  const other = transposed(table);
  return work(table) <= work(other) ? table : other;
}

function work(table: ContingencyTable): number {
  const { rows, columns } = marginsOf(table);
  const ordered = [...columns].sort((a, b) => a - b);
  const fills = (n: number) =>
    Math.exp(logFactorial(n + rows.length - 1) - logFactorial(n) - logFactorial(rows.length - 1));
  const outer = ordered.slice(0, -2).reduce((product, n) => product * fills(n), 1);
  const spent = ordered.slice(0, -2).reduce((sum, n) => sum + n, 0);
  return outer * 20 + Math.min(outer, fills(spent)) * fills(ordered.at(-2) ?? 0);
}

interface Search {
  /** Column totals, small ones first. */
  readonly columns: readonly number[];
  /** Tables with a minus-log-factorial sum of at most this count. */
  readonly limit: number;
  /** The tables of the last two columns by what is left of the rows. */
  readonly rests: Map<string, Rest>;
}

/** Sums over tables of the last two columns, least likely first. */
interface Rest {
  readonly logs: Float64Array;
  /** `sums[k]` is the total of the first k. */
  readonly sums: Float64Array;
}

/** Sum of 1 / (product of cell factorials) over the fillings that end at most as likely as the observed table. */
function unlikely(search: Search, left: readonly number[], done: { column: number; log: number }): number {
  if (done.column === search.columns.length - 2) return lookedUp(search, left, done.log);
  let sum = 0;
  forEachFill(left, search.columns[done.column] as number, (rest, log) => {
    sum += unlikely(search, rest, { column: done.column + 1, log: done.log + log });
  });
  return sum;
}

function lookedUp(search: Search, left: readonly number[], log: number): number {
  const key = [...left].sort((a, b) => a - b).join();
  const rest = search.rests.get(key) ?? listed(left, search.columns.at(-2) as number);
  search.rests.set(key, rest);
  return Math.exp(log) * (rest.sums[countUpTo(rest.logs, search.limit - log)] as number);
}

function listed(left: readonly number[], total: number): Rest {
  const found: number[] = [];
  forEachFill(left, total, (rest, log) => {
    found.push(rest.reduce((sum, n) => sum - logFactorial(n), log));
  });
  const logs = Float64Array.from(found).sort();
  const sums = new Float64Array(logs.length + 1);
  logs.forEach((log, k) => {
    sums[k + 1] = (sums[k] as number) + Math.exp(log);
  });
  return { logs, sums };
}

/** How many of the ascending values are at most `limit`. */
function countUpTo(values: Float64Array, limit: number): number {
  let [low, high] = [0, values.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((values[middle] as number) <= limit) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Calls back with the rest of each row and the minus-log-factorial sum, for every way to fill one column. */
function forEachFill(left: readonly number[], total: number, visit: (rest: number[], log: number) => void): void {
  const rest = [...left];
  const fill = (row: number, still: number, log: number): void => {
    const room = left[row] as number;
    if (row === left.length - 1) {
      if (still > room) return;
      rest[row] = room - still;
      visit(rest.slice(), log - logFactorial(still));
      return;
    }
    for (let n = 0; n <= Math.min(room, still); n += 1) {
      rest[row] = room - n;
      fill(row + 1, still - n, log - logFactorial(n));
    }
  };
  fill(0, total, 0);
}

const LOG_FACTORIALS: number[] = [0];

function logFactorial(n: number): number {
  for (let k = LOG_FACTORIALS.length; k <= n; k += 1) LOG_FACTORIALS.push(logGamma(k + 1));
  return LOG_FACTORIALS[n] as number;
}
