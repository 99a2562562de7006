import { type ContingencyTable, marginsOf, transposed } from './contingency-table.ts';
import { mutualInformation } from './mutual-information.ts';

/** Which side of a table is known and which is to be guessed. */
export const PREDICTION_DIRECTIONS = ['column-given-row', 'row-given-column'] as const;

/** One of {@link PREDICTION_DIRECTIONS}. */
export type PredictionDirection = (typeof PREDICTION_DIRECTIONS)[number];

/**
 * Share of the target's uncertainty (entropy) that the other side removes.
 *
 * @param table - counts
 * @param direction - the target is named first
 * @returns 0 to 1; null when the target has fewer than two used categories
 * @throws StatsInputError when the table is not a table
 * @see Theil 1972, Statistical Decomposition Analysis
 */
export function theilU(table: ContingencyTable, direction: PredictionDirection): number | null {
  const information = mutualInformation(towardsColumn(table, direction));
  if (information === null || information.column === 0) return null;
  return information.value / information.column;
}

/**
 * Share of wrong guesses about the target that knowing the other side removes, when the most frequent category is
 * always guessed. It is 0 whenever one category is most frequent everywhere, which is no proof of independence.
 *
 * @param table - counts
 * @param direction - the target is named first
 * @returns 0 to 1; null when the target has fewer than two used categories
 * @throws StatsInputError when the table is not a table
 * @see Goodman and Kruskal 1954, Journal of the American Statistical Association 49:732
 */
export function goodmanKruskalLambda(table: ContingencyTable, direction: PredictionDirection): number | null {
  const turned = towardsColumn(table, direction);
  const { columns, total } = marginsOf(turned);
  const blind = columns.reduce((most, count) => Math.max(most, count), 0);
  if (blind === total) return null;
  const informed = turned.reduce((sum, row) => sum + Math.max(...row), 0);
  return (informed - blind) / (total - blind);
}

function towardsColumn(table: ContingencyTable, direction: PredictionDirection): ContingencyTable {
  switch (direction) {
    case 'column-given-row':
      return table;
    case 'row-given-column':
      return transposed(table);
    default:
      return direction satisfies never;
  }
}
