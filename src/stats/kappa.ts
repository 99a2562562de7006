import { type ContingencyTable, marginsOf } from './contingency-table.ts';
import { StatsInputError } from './errors.ts';
import type { Interval } from './interval.ts';
import { normalWidth } from './normal.ts';

/** Agreement of two classifications beyond chance. */
export interface Kappa extends Interval {
  /** 1 is full agreement, 0 what chance gives; null when both always name the same single category, or nothing was rated. */
  readonly estimate: number | null;
  /** Large-sample standard error of `estimate`; null with it. */
  readonly standardError: number | null;
  /** Share of items named alike; null when nothing was rated. */
  readonly agreement: number | null;
}

/**
 * Cohen's kappa with its large-sample standard error and interval.
 *
 * @param table - counts, the same categories in the same order as rows (first rater) and columns (second rater)
 * @param level - confidence level, strictly between 0 and 1
 * @returns interval cut at -1 and 1, [-1, 1] when there is no estimate
 * @throws StatsInputError when the table is not square, a count is impossible or the level is out of range
 * @see Cohen 1960, Educational and Psychological Measurement 20:37; Fleiss, Cohen and Everitt 1969, Psychological
 * Bulletin 72:323, for the standard error
 */
export function cohenKappa(table: ContingencyTable, level = 0.95): Kappa {
  const { rows, columns, total } = marginsOf(table);
  if (rows.length !== columns.length) throw new StatsInputError('cohenKappa requires as many rows as columns');
  const z = normalWidth(level);
  const shares = table.map((row) => row.map((count) => count / total));
  const agreement = total === 0 ? null : diagonal(shares);
  const chance = rows.reduce((sum, row, i) => sum + (row / total) * ((columns[i] as number) / total), 0);
  if (agreement === null || chance >= 1) return { estimate: null, standardError: null, agreement, low: -1, high: 1 };
  const estimate = (agreement - chance) / (1 - chance);
  const standardError = Math.sqrt(Math.max(0, varianceOf(shares, estimate, chance)) / total);
  const half = z * standardError;
  return { estimate, standardError, agreement, low: Math.max(-1, estimate - half), high: Math.min(1, estimate + half) };
}

function diagonal(shares: ContingencyTable): number {
  return shares.reduce((sum, row, i) => sum + (row[i] as number), 0);
}

/** Variance of one item's contribution: equation 13 of Fleiss, Cohen and Everitt 1969. */
function varianceOf(shares: ContingencyTable, kappa: number, chance: number): number {
  const { rows, columns } = marginsOf(shares);
  let sum = 0;
  shares.forEach((row, i) => {
    row.forEach((share, j) => {
      const pull = (1 - kappa) * ((columns[i] as number) + (rows[j] as number));
      sum += share * ((i === j ? 1 : 0) - pull) ** 2;
    });
  });
  return (sum - (kappa - chance * (1 - kappa)) ** 2) / (1 - chance) ** 2;
}
