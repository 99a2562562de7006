import { NOT_KNOWN } from '../snap/not-known.ts';
import type { ChainTree } from './chain-tree.ts';

/**
 * What some games say about a target in every cell of a chain. Everything in it is a sum over games, so leaving a game
 * or an offense out is a subtraction.
 */
export interface ChainTally {
  readonly classes: number;
  /** Snaps of class k in node n at `n * classes + k`; every node holds its children's snaps. */
  readonly counts: Float64Array;
  /** Snaps with this one as their deepest node. */
  readonly ending: Float64Array;
  /** Games with at least one such snap in the node. */
  readonly games: Float64Array;
}

/** A target as codes: the class of every snap, 255 where it does not count. */
export interface TargetCodes {
  readonly codes: Uint8Array;
  readonly classes: number;
  /** How many snaps each stands for; absent where each is one. */
  readonly weights?: Float64Array;
}

/**
 * Counts the classes of one game's snaps in every cell of the tree.
 *
 * @param rows - the game's snaps
 */
export function tallyGame(tree: ChainTree, target: TargetCodes, rows: ArrayLike<number>): ChainTally {
  return tallyGames(tree, target, [rows]);
}

/**
 * Counts the classes of the snaps of several games in every cell of the tree; of none, the empty tally.
 *
 * @param games - the snaps of each game
 */
export function tallyGames(tree: ChainTree, target: TargetCodes, games: readonly ArrayLike<number>[]): ChainTally {
  const tally = emptyTally(tree, target.classes);
  const lastGame = new Int32Array(tree.parent.length); // number of the last game seen in a node, from 1
  games.forEach((rows, g) => {
    for (let i = 0; i < rows.length; i++) {
      const row = rows[i] as number;
      if (countSnap(tally, target, { row, node: tree.nodeOf[row] as number })) {
        for (let node = tree.nodeOf[row] as number; lastGame[node] !== g + 1; node = tree.parent[node] as number) {
          lastGame[node] = g + 1;
          add(tally.games, node, 1);
        }
      }
    }
  });
  gatherUp(tree, tally);
  return tally;
}

/** Counts a snap in its deepest node; false where it is none of the target's. */
function countSnap(tally: ChainTally, target: TargetCodes, { row, node }: { row: number; node: number }): boolean {
  const code = target.codes[row] as number;
  const snaps = code === NOT_KNOWN ? 0 : (target.weights?.[row] ?? 1);
  if (snaps === 0) return false;
  add(tally.counts, node * target.classes + code, snaps);
  add(tally.ending, node, snaps);
  return true;
}

/** The sum of tallies of one tree; of none, the empty tally. */
export function sumTallies(tree: ChainTree, classes: number, tallies: readonly ChainTally[]): ChainTally {
  const sum = emptyTally(tree, classes);
  for (const tally of tallies) {
    addAll(sum.counts, tally.counts);
    addAll(sum.ending, tally.ending);
    addAll(sum.games, tally.games);
  }
  return sum;
}

/** `whole` without `part`. */
export function subtractTally(whole: ChainTally, part: ChainTally): ChainTally {
  return {
    classes: whole.classes,
    counts: difference(whole.counts, part.counts),
    ending: difference(whole.ending, part.ending),
    games: difference(whole.games, part.games),
  };
}

function difference(whole: Float64Array, part: Float64Array): Float64Array {
  const left = new Float64Array(whole.length);
  for (let i = 0; i < left.length; i++) left[i] = (whole[i] as number) - (part[i] as number);
  return left;
}

/** Snaps counted in a node. */
export function nodeTotal(tally: ChainTally, node: number): number {
  let total = 0;
  for (let k = 0; k < tally.classes; k++) total += tally.counts[node * tally.classes + k] as number;
  return total;
}

function emptyTally(tree: ChainTree, classes: number): ChainTally {
  const nodes = tree.parent.length;
  return {
    classes,
    counts: new Float64Array(nodes * classes),
    ending: new Float64Array(nodes),
    games: new Float64Array(nodes),
  };
}

/** Passes every node's snaps on to its parent; children come after their parents, so one backward pass does it. */
function gatherUp(tree: ChainTree, { classes, counts, games }: ChainTally): void {
  for (let node = tree.parent.length - 1; node > 0; node--) {
    if (games[node] === 0) continue;
    const parent = tree.parent[node] as number;
    for (let k = 0; k < classes; k++) add(counts, parent * classes + k, counts[node * classes + k] as number);
  }
}

function addAll(sums: Float64Array, more: Float64Array): void {
  for (let i = 0; i < sums.length; i++) add(sums, i, more[i] as number);
}

function add(counts: Float64Array, at: number, amount: number): void {
  counts[at] = (counts[at] as number) + amount;
}
