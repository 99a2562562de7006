import { type ChainTally, nodeTotal } from '../chain-tally.ts';
import type { ChainTree } from '../chain-tree.ts';
import type { Predict } from './forecast-method.ts';

/** A cell with fewer snaps says nothing in a spreadsheet: the cell above it speaks. Common practice, no source. */
const LEAST_IN_CELL = 5;
/** Snaps of each class added to a cell, so that no class is ever impossible. @see Krichevsky and Trofimov 1981 */
const ADDED_TO_CELL = 0.5;
/** The same for a rate over all snaps. @see Laplace's rule of succession */
const ADDED_TO_RATE = 1;

/** Which counts a plain forecast is read from. */
export interface PlainTable {
  readonly tree: ChainTree;
  readonly tally: ChainTally;
  /** Deepest level of the cells it looks at: 0 is the rate over all snaps, 1 down and distance (before the look). */
  readonly depth: number;
}

/** What a spreadsheet would say of a snap: the share of its finest cell, no deeper than asked, that has five snaps. */
export function plainShares({ tree, tally, depth }: PlainTable): Predict {
  return (row) => {
    let node = tree.nodeOf[row] as number;
    while (node !== 0 && ((tree.depth[node] as number) > depth || nodeTotal(tally, node) < LEAST_IN_CELL)) {
      node = tree.parent[node] as number;
    }
    return cellShares(tally, node);
  };
}

function cellShares(tally: ChainTally, node: number): Float64Array {
  const { classes } = tally;
  const added = node === 0 ? ADDED_TO_RATE : ADDED_TO_CELL;
  const total = nodeTotal(tally, node) + added * classes;
  return Float64Array.from(
    { length: classes },
    (_, k) => ((tally.counts[node * classes + k] as number) + added) / total,
  );
}
