import { NOT_KNOWN } from '../snap/not-known.ts';

/**
 * The cells of a chain over one set of snaps: node 0 is all snaps, its children split them by the first level, their
 * children by the second, and so on. Only cells that occur have a node, and every parent comes before its children.
 */
export interface ChainTree {
  /** One code per snap for each level, coarse to fine; 255 where it was not charted. */
  readonly levels: readonly Uint8Array[];
  /** Parent of each node; the root is its own. */
  readonly parent: Int32Array;
  /** Levels above each node; the root has 0. */
  readonly depth: Uint8Array;
  /** Node of each snap: the deepest one that is charted, since a level not charted ends its path. */
  readonly nodeOf: Int32Array;
  /** Child of a node for the code of the next level, under the key `node * 256 + code`. */
  readonly child: ReadonlyMap<number, number>;
  /** The nodes by parent: those right below node n stand in `children` from `childrenFrom[n]` to `childrenFrom[n + 1]`, by code. */
  readonly children: Int32Array;
  readonly childrenFrom: Int32Array;
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
    const width = codes.reduce((most, code) => (code === NOT_KNOWN ? most : Math.max(most, code + 1)), 0);
    const children = new Int32Array(parent.length * width); // 0 where there is none: the root is nobody's child
    for (let i = 0; i < size; i++) {
      const node = nodeOf[i] as number;
      const code = codes[i] ?? NOT_KNOWN;
      if (depth[node] !== level || code === NOT_KNOWN) continue;
      const place = node * width + code;
      if (children[place] === 0) {
        children[place] = parent.length;
        child.set(node * 256 + code, parent.length);
        parent.push(node);
        depth.push(level + 1);
      }
      nodeOf[i] = children[place] as number;
    }
  });
  return {
    levels,
    parent: Int32Array.from(parent),
    depth: Uint8Array.from(depth),
    nodeOf,
    child,
    ...byParent(parent, child),
  };
}

/** In the order of the codes, whatever the order of the snaps. */
function byParent(parent: readonly number[], child: ReadonlyMap<number, number>) {
  const keys = Float64Array.from(child.keys()).sort();
  const childrenFrom = new Int32Array(parent.length + 1);
  for (let node = 1; node < parent.length; node++) {
    const after = (parent[node] as number) + 1;
    childrenFrom[after] = (childrenFrom[after] as number) + 1;
  }
  for (let i = 1; i < childrenFrom.length; i++) {
    childrenFrom[i] = (childrenFrom[i] as number) + (childrenFrom[i - 1] as number);
  }
  return { children: Int32Array.from(keys, (key) => child.get(key) as number), childrenFrom };
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

/** The codes of a snap, level by level. */
export function pathOf({ levels }: ChainTree, row: number): number[] {
  return levels.map((codes) => codes[row] ?? NOT_KNOWN);
}

/** Every node, in order. */
export function allNodes({ parent }: ChainTree): Int32Array {
  return Int32Array.from(parent, (_, node) => node);
}
