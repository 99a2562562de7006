import { NOT_KNOWN } from '../snap/not-known.ts';

/**
 * The cells of a chain over one set of snaps: node 0 is all snaps, its children split them by the first level, their
 * children by the second, and so on. Only cells that occur have a node, and every parent comes before its children.
 */
export interface ChainTree {
  /** Parent of each node; the root is its own. */
  readonly parent: Int32Array;
  /** Levels above each node; the root has 0. */
  readonly depth: Uint8Array;
  /** Node of each snap: the deepest one that can be told, since a level not charted ends its path. */
  readonly nodeOf: Int32Array;
  /** Child of a node for the code of the next level, under the key `node * 256 + code`. */
  readonly child: ReadonlyMap<number, number>;
}

/**
 * The tree of cells that the levels cut the snaps into.
 *
 * @param levels - one code per snap for each level, coarse to fine; 255 where it was not charted
 * @param size - number of snaps
 */
export function chainTree(levels: readonly Uint8Array[], size: number): ChainTree {
  const parent = [0];
  const depth = [0];
  const child = new Map<number, number>();
  const nodeOf = new Int32Array(size);
  levels.forEach((codes, level) => {
    const children = new Int32Array(parent.length * 256); // 0 where there is none: the root is nobody's child
    for (let i = 0; i < size; i++) {
      const node = nodeOf[i] as number;
      const code = codes[i] ?? NOT_KNOWN;
      if (depth[node] !== level || code === NOT_KNOWN) continue;
      const key = node * 256 + code;
      if (children[key] === 0) {
        children[key] = parent.length;
        child.set(key, parent.length);
        parent.push(node);
        depth.push(level + 1);
      }
      nodeOf[i] = children[key] as number;
    }
  });
  return { parent: Int32Array.from(parent), depth: Uint8Array.from(depth), nodeOf, child };
}

/**
 * The node of a path of codes: as deep as the tree goes along it.
 *
 * @param path - codes from the first level on
 */
export function nodeAt(tree: ChainTree, path: readonly number[]): number {
  let node = 0;
  for (const code of path) {
    const next = tree.child.get(node * 256 + code);
    if (next === undefined) return node;
    node = next;
  }
  return node;
}
