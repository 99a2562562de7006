import { type ContingencyTable, marginsOf } from './contingency-table.ts';
import { type EntropyEstimator, entropy, type InformationUnit, inUnit } from './entropy.ts';
import { type PermutationResult, permutationTest } from './permutation.ts';

/** What two classifications tell about each other. */
export interface MutualInformation {
  /** Entropy of the row category. */
  readonly row: number;
  /** Entropy of the column category. */
  readonly column: number;
  /** Entropy of the pair. */
  readonly joint: number;
  /** Plug-in mutual information, at least 0; in small samples well above 0 by chance alone. */
  readonly value: number;
  /** From Miller-Madow entropies; may be negative. */
  readonly millerMadow: number;
}

/**
 * Mutual information of the rows and columns of a table.
 *
 * @param table - counts
 * @param unit - of every entropy
 * @returns null when the table is empty
 * @throws StatsInputError when the table is not a table
 * @see Cover and Thomas 2006, Elements of Information Theory, section 2.3
 * @example mutualInformation([[5, 0], [0, 5]], 'bits')?.value // 1
 */
export function mutualInformation(table: ContingencyTable, unit: InformationUnit = 'nats'): MutualInformation | null {
  const plain = entropies(table, 'plug-in');
  const mended = entropies(table, 'miller-madow');
  if (plain === null || mended === null) return null;
  return {
    row: inUnit(plain.row, unit),
    column: inUnit(plain.column, unit),
    joint: inUnit(plain.joint, unit),
    value: inUnit(shared(plain), unit),
    millerMadow: inUnit(mended.row + mended.column - mended.joint, unit),
  };
}

/** Rounding may take the difference below 0. */
function shared({ row, column, joint }: { row: number; column: number; joint: number }): number {
  return Math.max(0, row + column - joint);
}

function entropies(table: ContingencyTable, estimator: EntropyEstimator) {
  const { rows, columns, total } = marginsOf(table);
  if (total === 0) return null;
  const of = (counts: readonly number[]) => entropy(counts, estimator) ?? 0;
  return { row: of(rows), column: of(columns), joint: of(table.flat()) };
}

/** A seeded permutation test of mutual information. */
export interface MutualInformationTask {
  /** Whole counts. */
  readonly table: ContingencyTable;
  /** 1999 when absent. */
  readonly permutations?: number | undefined;
  readonly seed: number | string;
}

/**
 * Whether rows and columns tell more about each other than chance would have it: mutual information in nats with its
 * mean and p under shuffling.
 *
 * @returns null when the table is empty
 * @throws StatsInputError when the table holds fractions or is not a table
 * @see {@link permutationTest}
 */
export function mutualInformationTest(task: MutualInformationTask): PermutationResult | null {
  const margins = entropies(task.table, 'plug-in');
  if (margins === null) return null;
  const terms = plugInTerms(marginsOf(task.table).total);
  // Shuffling leaves the margins as they are, so only the pair's entropy is added up again.
  const statistic = (cells: Float64Array) => shared({ ...margins, joint: sumOfTerms(cells, terms) });
  return permutationTest({ ...task, statistic });
}

/** What each count of a category adds to the plug-in entropy of a total. */
function plugInTerms(total: number): Float64Array {
  return Float64Array.from({ length: total + 1 }, (_, count) =>
    count === 0 ? 0 : -(count / total) * Math.log(count / total),
  );
}

function sumOfTerms(cells: Float64Array, terms: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < cells.length; i += 1) sum += terms[cells[i] as number] as number;
  return sum;
}
