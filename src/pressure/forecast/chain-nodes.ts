import { cellsBehindGap } from './chain-gap.ts';
import { type ChainTree, pathOf } from './chain-tree.ts';

/** The nodes that may hold the first `size` snaps and all above them, in ascending order: every node after its parent. */
export function nodesOfFirst(tree: ChainTree, size: number): Int32Array {
  const { parent, nodeOf } = tree;
  const wanted = new Uint8Array(parent.length);
  wanted[0] = 1;
  const want = (cell: number) => {
    for (let node = cell; wanted[node] === 0; node = parent[node] as number) wanted[node] = 1;
  };
  for (let i = 0; i < size; i++) {
    want(nodeOf[i] as number);
    for (const { cell } of cellsBehindGap(tree, pathOf(tree, i))) want(cell);
  }
  return Int32Array.from(wanted.keys()).filter((node) => wanted[node] === 1);
}
