import { NOT_KNOWN } from '../snap/not-known.ts';
import type { ChainTree } from './chain-tree.ts';

/** A cell that may hold a snap of which some level was not charted. */
export interface PossibleCell {
  readonly cell: number;
  /** The cell, at or above it, that says how likely it is: every level that was not charted stands above it. */
  readonly weighed: number;
}

/**
 * The cells that may hold a snap on which a level was not charted and a deeper one was, such as its down and distance
 * under every look; none where no level is skipped, or where no film shows what was charted below it.
 *
 * @param path - codes from the first level on; 255 where it was not charted
 */
export function cellsBehindGap(tree: ChainTree, path: readonly number[]): readonly PossibleCell[] {
  const gap = lastGap(path);
  if (gap < 0) return [];
  let nodes = [0];
  for (const code of path.slice(0, gap + 2)) nodes = nodes.flatMap((node) => below(tree, node, code));
  return nodes.map((weighed) => ({ cell: deepest(tree, weighed, path.slice(gap + 2)), weighed }));
}

/** The last level not charted that has a charted one below it; -1 where there is none. */
function lastGap(path: readonly number[]): number {
  let level = path.length - 1;
  while (level >= 0 && path[level] === NOT_KNOWN) level--;
  return level < 0 ? -1 : path.lastIndexOf(NOT_KNOWN, level);
}

function below({ child, children, childrenFrom }: ChainTree, node: number, code: number): readonly number[] {
  if (code === NOT_KNOWN) return [...children.subarray(childrenFrom[node], childrenFrom[node + 1])];
  const next = child.get(node * 256 + code);
  return next === undefined ? [] : [next];
}

function deepest({ child }: ChainTree, from: number, codes: readonly number[]): number {
  let node = from;
  for (const code of codes) {
    const next = child.get(node * 256 + code);
    if (next === undefined) break;
    node = next;
  }
  return node;
}
