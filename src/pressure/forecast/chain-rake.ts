import { type ChainFit, sharesAt } from './chain-fit.ts';
import { type ChainTally, nodeTotal } from './chain-tally.ts';
import type { ChainTree } from './chain-tree.ts';

/** Rounds of raking; with the mixes of film the shares then add up to the fifth digit. */
const ROUNDS = 12;

/** Keeps the ratio of two nearly impossible shares near 1. */
const RARE = 0.0005;

/** The cell to be matched, and the own snaps below it. */
export interface RakeTask {
  readonly tree: ChainTree;
  /** The chain to be moved. */
  readonly base: ChainFit;
  readonly node: number;
  /** Shares that the cells below are to add up to on the own snaps. */
  readonly target: Float64Array;
  readonly own: ChainTally;
}

/**
 * One ratio a class by which to multiply the archive's shares of all cells right below a node, so that on the offense's
 * own snaps they add up to the node's own shares. Without own snaps below: the ratio of the node itself.
 *
 * @param ratios - written over
 * @see iterative proportional fitting: Deming and Stephan 1940, Annals of Mathematical Statistics 11:427
 */
export function rake(task: RakeTask, ratios: Float64Array): void {
  const { tree, base, node, target, own } = task;
  const above = sharesAt(base, node);
  for (let k = 0; k < ratios.length; k++) ratios[k] = ((target[k] as number) + RARE) / ((above[k] as number) + RARE);
  const seen = tree.children
    .subarray(tree.childrenFrom[node], tree.childrenFrom[node + 1])
    .filter((child) => own.games[child] !== 0);
  const weights = new Float64Array(seen.length);
  let snaps = 0;
  for (let i = 0; i < seen.length; i++) {
    weights[i] = nodeTotal(own, seen[i] as number);
    snaps += weights[i] as number;
  }
  const sums = new Float64Array(ratios.length);
  for (let round = 0; round < ROUNDS && snaps > 0; round++) {
    sums.fill(0);
    for (let i = 0; i < seen.length; i++)
      addMoved(base, seen[i] as number, { ratios, weight: weights[i] as number, sums });
    for (let k = 0; k < ratios.length; k++) {
      ratios[k] = ((ratios[k] as number) * ((target[k] as number) * snaps + RARE)) / ((sums[k] as number) + RARE);
    }
  }
}

interface Moving {
  readonly ratios: Float64Array;
  readonly weight: number;
  readonly sums: Float64Array;
}

function addMoved(base: ChainFit, node: number, { ratios, weight, sums }: Moving): void {
  const start = node * base.classes;
  let total = 0;
  for (let k = 0; k < base.classes; k++) total += (base.shares[start + k] as number) * (ratios[k] as number);
  for (let k = 0; k < base.classes; k++) {
    const moved = ((base.shares[start + k] as number) * (ratios[k] as number)) / total;
    sums[k] = (sums[k] as number) + weight * moved;
  }
}
