import { type ContingencyTable, marginsOf, withoutEmpty } from './contingency-table.ts';
import { StatsInputError } from './errors.ts';
import { requireNonNegative, totalCount } from './require-counts.ts';
import { cephes } from './special-functions.ts';

/** Likelihood-ratio test of independence, with Pearson's beside it. */
export interface GTest {
  readonly g: number;
  /** Degrees of freedom, from the rows and columns that hold counts. */
  readonly degrees: number;
  readonly p: number;
  /** G with Williams' correction for small samples. */
  readonly williams: number;
  readonly williamsP: number;
  /** Pearson's chi-square. */
  readonly pearson: number;
  readonly pearsonP: number;
}

/**
 * Likelihood-ratio test of independence in a table. Not for sparse tables: there its p-values are wrong both ways.
 *
 * @param table - counts; empty rows and columns are dropped
 * @returns p 1 when fewer than two rows or columns remain
 * @throws StatsInputError when the table is no table
 * @see Sokal and Rohlf 1995, Biometry; Williams 1976, Biometrika 63:33
 */
export function gTest(table: ContingencyTable): GTest {
  const used = withoutEmpty(table);
  const { rows, columns, total } = marginsOf(used);
  const degrees = (rows.length - 1) * (columns.length - 1);
  if (rows.length < 2 || columns.length < 2) return NOTHING_TO_TEST;
  const expected = rows.map((row) => columns.map((column) => (row * column) / total));
  const g = likelihoodRatio(used.flat(), expected.flat());
  const pearson = chiSquare(used.flat(), expected.flat());
  const williams = g / williamsFactor({ rows, columns, total });
  const p = (statistic: number) => cephes.chdtrc(degrees, statistic);
  return { g, degrees, p: p(g), williams, williamsP: p(williams), pearson, pearsonP: p(pearson) };
}

const NOTHING_TO_TEST: GTest = { g: 0, degrees: 0, p: 1, williams: 0, williamsP: 1, pearson: 0, pearsonP: 1 };

function likelihoodRatio(observed: readonly number[], expected: readonly number[]): number {
  const sum = observed.reduce(
    (s, count, i) => s + (count === 0 ? 0 : count * Math.log(count / (expected[i] as number))),
    0,
  );
  return Math.max(0, 2 * sum);
}

function chiSquare(observed: readonly number[], expected: readonly number[]): number {
  return observed.reduce((s, count, i) => s + (count - (expected[i] as number)) ** 2 / (expected[i] as number), 0);
}

function williamsFactor({
  rows,
  columns,
  total,
}: {
  rows: readonly number[];
  columns: readonly number[];
  total: number;
}): number {
  const spread = (margin: readonly number[]) => total * margin.reduce((sum, count) => sum + 1 / count, 0) - 1;
  return 1 + (spread(rows) * spread(columns)) / (6 * total * (rows.length - 1) * (columns.length - 1));
}

/** Likelihood-ratio test of fit. */
export interface FitTest {
  readonly g: number;
  readonly degrees: number;
  readonly p: number;
}

/**
 * Likelihood-ratio test of category counts against given shares.
 *
 * @param counts - one number of at least 0 per category
 * @param shares - expected shares, summing to 1; a category with share 0 must be empty and is dropped
 * @throws StatsInputError when the lengths differ, the shares do not sum to 1 or a count is impossible
 * @example gTestOfFit([1752, 1895], [0.5, 0.5]) // g 5.6085, p 0.0179
 */
export function gTestOfFit(counts: readonly number[], shares: readonly number[]): FitTest {
  const total = totalCount(counts);
  requireShares(counts, shares);
  const used = counts.map((_, i) => i).filter((i) => shares[i] !== 0);
  const g = likelihoodRatio(
    used.map((i) => counts[i] as number),
    used.map((i) => total * (shares[i] as number)),
  );
  const degrees = used.length - 1;
  return { g, degrees, p: degrees === 0 ? 1 : cephes.chdtrc(degrees, g) };
}

const SUM_SLACK = 1e-6; // judgement: shares written with six digits still pass

function requireShares(counts: readonly number[], shares: readonly number[]): void {
  if (shares.length !== counts.length) {
    throw new StatsInputError(`gTestOfFit requires one share per category, got ${shares.length} for ${counts.length}`);
  }
  for (const share of shares) requireNonNegative(share, 'an expected share');
  const sum = shares.reduce((a, b) => a + b, 0);
  if (Math.abs(sum - 1) > SUM_SLACK) throw new StatsInputError(`expected shares must sum to 1, got ${sum}`);
  if (counts.some((count, i) => count > 0 && shares[i] === 0)) {
    throw new StatsInputError('gTestOfFit cannot judge counts where the expected share is 0');
  }
}
