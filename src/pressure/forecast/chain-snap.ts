import { type ChainFit, sharesAt } from './chain-fit.ts';
import { cellsBehindGap } from './chain-gap.ts';
import { type ChainTally, nodeTotal } from './chain-tally.ts';
import { type ChainTree, nodeAt } from './chain-tree.ts';

/** A fitted chain and the snaps behind it. */
export interface SnapChain {
  readonly tree: ChainTree;
  readonly fit: ChainFit;
  /** The offense's own games. */
  readonly own: ChainTally;
  /** The games of other offenses; null without an archive. */
  readonly archive: { readonly tally: ChainTally } | null;
}

/** What other offenses line up in counts as so many of this one's snaps; judgment. */
const OTHERS_WORTH = 8;

/**
 * What a fit expects on a snap. A level that was not charted on it is averaged over: each cell the snap may be in counts as
 * often as this offense, and a little as the others, was in it among the snaps that are alike in what was charted.
 *
 * @param path - codes from the first level on; 255 where it was not charted
 */
export function sharesOnSnap(chain: SnapChain, path: readonly number[]): Float64Array {
  const { tree, fit } = chain;
  const cells = cellsBehindGap(tree, path);
  const weights = weightsOf(
    chain,
    cells.map(({ weighed }) => weighed),
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  if (total === 0) return sharesAt(fit, nodeAt(tree, path));
  const mixed = new Float64Array(fit.classes);
  cells.forEach(({ cell }, i) => {
    sharesAt(fit, cell).forEach((share, k) => {
      mixed[k] = (mixed[k] as number) + ((weights[i] as number) / total) * share;
    });
  });
  return mixed;
}

function weightsOf({ own, archive }: SnapChain, cells: readonly number[]): number[] {
  const others = cells.map((cell) => (archive ? nodeTotal(archive.tally, cell) : 0));
  const all = others.reduce((sum, snaps) => sum + snaps, 0);
  return cells.map((cell, i) => nodeTotal(own, cell) + (all === 0 ? 0 : (OTHERS_WORTH * (others[i] as number)) / all));
}
