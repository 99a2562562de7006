import type { ChainTally } from './chain-tally.ts';
import type { ChainTree } from './chain-tree.ts';

/** The shares of every cell of a chain, and what they rest on. */
export interface ChainFit {
  readonly classes: number;
  /** Share of class k in node n at `n * classes + k`. */
  readonly shares: Float64Array;
  /** Independent snaps the share of a node is worth. */
  readonly concentration: Float64Array;
  /** Weight of the node's own snaps in its share, 0 to 1. */
  readonly ownWeight: Float64Array;
}

/** A fit of which no cell is settled yet. */
export function emptyFit(tree: ChainTree, classes: number): ChainFit {
  const nodes = tree.parent.length;
  return {
    classes,
    shares: new Float64Array(nodes * classes),
    concentration: new Float64Array(nodes),
    ownWeight: new Float64Array(nodes),
  };
}

/** The shares of one node: a view, which follows the fit. */
export function sharesAt(fit: ChainFit, node: number): Float64Array {
  return fit.shares.subarray(node * fit.classes, (node + 1) * fit.classes);
}

/** What a fit says of the snaps of a tally, added up over their deepest cells. */
export function sharesOnSnaps(fit: ChainFit, tally: ChainTally): Float64Array {
  const totals = new Float64Array(fit.classes);
  for (let node = 0; node < tally.ending.length; node++) {
    const snaps = tally.ending[node] as number;
    for (let k = 0; snaps > 0 && k < fit.classes; k++) {
      totals[k] = (totals[k] as number) + snaps * (fit.shares[node * fit.classes + k] as number);
    }
  }
  return totals;
}
