import { archiveWorth } from './archive-worth.ts';
import { type ChainTally, nodeTotal } from './chain-tally.ts';
import type { ChainTree } from './chain-tree.ts';

/** The constants of a chain for one target. */
export interface ChainStrengths {
  /** Without an archive: snaps the cell above is worth, one per level. Infinity pools the level completely. */
  readonly own: readonly number[];
  /** With an archive: snaps its rate, as shifted from above, is worth; root first, then one per level. */
  readonly archive: readonly number[];
  /** Snaps one game is worth as evidence of the next: the smaller, the more an offense changes from game to game. */
  readonly gameToGame: number;
  /** Snaps the rest of the archive is worth as evidence of this offense's long-run share, for intervals only. */
  readonly offenseToOffense: number;
  /**
   * Most snaps the cell above is worth as evidence of a cell's long-run share, for intervals only: a mean may be pooled
   * because four games cannot tell cells apart, and the cells differ all the same. Absent: as many as the strengths say.
   */
  readonly cellToCell?: number;
}

/** What a chain is fitted to. */
export interface ChainData {
  readonly tree: ChainTree;
  /** The offense's own games. */
  readonly own: ChainTally;
  /** The games of other offenses and how many offenses they are; null without an archive. */
  readonly archive: { readonly tally: ChainTally; readonly offenses: number } | null;
  readonly strengths: ChainStrengths;
}

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

/**
 * Fits the Dirichlet-multinomial chain. Without an archive each cell is its own snaps and the cell above, weighed by a
 * constant strength. With one, the place of the cell above is taken by the archive's rate of the cell, times the ratio
 * by which this offense already deviates from the archive one level up, renormalised; the root is shifted by the
 * offense's total over what the archive expects on its snaps. The own evidence that enters there is the cell as the
 * offense's film alone would have it, so an archive that is like the offense moves no share.
 *
 * @see the back-off chain mean_k = (x_k + M_k mean_(k-1)) / (n_k + M_k), MacKay and Peto 1995, Natural Language
 * Engineering 1:289
 */
export function fitChain(data: ChainData): ChainFit {
  const plain = fitPlain(data.tree, data.own, data.strengths);
  if (data.archive === null) return plain;
  const base = fitPlain(data.tree, data.archive.tally, data.strengths);
  lendUnseenClasses(base, plain, data.archive.tally);
  return fitShifted(data, plain, { base, ...data.archive });
}

/**
 * A class the archive never shows was not told apart there: it keeps the offense's own share, and the archive speaks
 * of the rest.
 */
function lendUnseenClasses(base: ChainFit, plain: ChainFit, archive: ChainTally): void {
  const unseen = Array.from({ length: base.classes }, (_, k) => archive.counts[k] === 0);
  if (!unseen.includes(true)) return;
  for (let node = 0; node < base.concentration.length; node++) {
    const [lent, kept] = [sharesAt(plain, node), sharesAt(base, node)];
    const [lentTotal, keptTotal] = [lent, kept.slice()].map((shares) => totalWhere(shares, unseen)) as [number, number];
    kept.forEach((share, k) => {
      kept[k] = unseen[k] ? (lent[k] as number) : (share * (1 - lentTotal)) / (1 - keptTotal);
    });
  }
}

function totalWhere(shares: Float64Array, chosen: readonly boolean[]): number {
  return shares.reduce((sum, share, k) => (chosen[k] ? sum + share : sum), 0);
}

/** Prior count of each class at the root of a chain with nothing above it (Jeffreys). */
const ROOT_PRIOR = 0.5;

function fitPlain(tree: ChainTree, tally: ChainTally, strengths: ChainStrengths): ChainFit {
  const fit = emptyFit(tree, tally.classes);
  const even = new Float64Array(tally.classes).fill(1 / tally.classes);
  for (let node = 0; node < tree.parent.length; node++) {
    const depth = tree.depth[node] as number;
    const counts = tally.counts.subarray(node * tally.classes, (node + 1) * tally.classes);
    const prior = depth === 0 ? even : sharesAt(fit, tree.parent[node] as number);
    const strength = depth === 0 ? ROOT_PRIOR * tally.classes : (strengths.own[depth - 1] ?? Number.POSITIVE_INFINITY);
    const worth = effectiveSnaps(tally, node, strengths.gameToGame);
    const most = depth === 0 ? strength : cellCap(strengths);
    settle(fit, { node, parent: tree.parent[node] as number, counts, prior, strength, worth, most });
  }
  return fit;
}

interface ArchiveFit {
  readonly base: ChainFit;
  readonly tally: ChainTally;
  readonly offenses: number;
}

function fitShifted(data: ChainData, plain: ChainFit, archive: ArchiveFit): ChainFit {
  const { tree, own, strengths } = data;
  const fit = emptyFit(tree, plain.classes);
  const shift = rootShift(data, plain, archive);
  for (let node = 0; node < tree.parent.length; node++) {
    const parent = tree.parent[node] as number;
    const ratio = node === 0 ? shift : ratioOf(sharesAt(fit, parent), sharesAt(archive.base, parent));
    const prior = shifted(sharesAt(archive.base, node), ratio);
    const strength = trusted(strengths.archive[tree.depth[node] as number], archive, node);
    const counts = scaled(sharesAt(plain, node), nodeTotal(own, node));
    // Where the own film's chain pools the cell with all snaps, the cell's own snaps have no say in its share.
    // Where the own film's chain pools the cell with all snaps, the cell's own snaps have no say in its share.
    const say = node === 0 ? 1 : (plain.ownWeight[node] as number);
    const worth = say * effectiveSnaps(own, node, strengths.gameToGame);
    const most = node === 0 ? strengths.offenseToOffense : cellCap(strengths);
    settle(fit, { node, parent, counts, prior, strength, worth, most });
  }
  return fit;
}

/** Observed over expected of the whole offense, pulled towards 1 by the root's strength and by one snap for rare classes. */
function rootShift({ own, strengths }: ChainData, plain: ChainFit, archive: ArchiveFit): Float64Array {
  const snaps = nodeTotal(own, 0);
  const strength = trusted(strengths.archive[0], archive, 0);
  const expected = sharesOnSnaps(archive.base, own);
  return sharesOnSnaps(plain, own).map((seen, k) => {
    const mean = (expected[k] as number) / snaps;
    return snaps === 0 ? 1 : (seen + strength * mean + 1) / ((snaps + strength) * mean + 1);
  });
}

/** What a fit says of the snaps of a tally, added up over their deepest cells. */
function sharesOnSnaps(fit: ChainFit, tally: ChainTally): Float64Array {
  const totals = new Float64Array(fit.classes);
  tally.ending.forEach((snaps, node) => {
    for (let k = 0; snaps > 0 && k < fit.classes; k++) {
      totals[k] = (totals[k] as number) + snaps * (fit.shares[node * fit.classes + k] as number);
    }
  });
  return totals;
}

/** A strength cut down to what the archive's cell can carry. */
function trusted(strength = Number.POSITIVE_INFINITY, { tally, offenses }: ArchiveFit, node: number): number {
  return archiveWorth(strength, { snaps: nodeTotal(tally, node), offenses });
}

/** Snaps of a node as independent evidence: those of one game are alike (Kish's design effect for clusters). */
function effectiveSnaps(tally: ChainTally, node: number, gameToGame: number): number {
  const snaps = nodeTotal(tally, node);
  if (snaps === 0) return 0;
  const perGame = snaps / (tally.games[node] as number);
  return snaps / (1 + (perGame - 1) / (gameToGame + 1));
}

interface CellEvidence {
  readonly node: number;
  readonly parent: number;
  readonly counts: Float64Array;
  readonly prior: Float64Array;
  readonly strength: number;
  readonly worth: number;
  /** Most that the prior may be worth. */
  readonly most: number;
}

function cellCap({ cellToCell = Number.POSITIVE_INFINITY }: ChainStrengths): number {
  return cellToCell;
}

function settle(fit: ChainFit, cell: CellEvidence): void {
  const { node, counts, prior, strength } = cell;
  const snaps = counts.reduce((sum, count) => sum + count, 0);
  const weight = strength === Number.POSITIVE_INFINITY || snaps === 0 ? 0 : snaps / (snaps + strength);
  for (let k = 0; k < fit.classes; k++) {
    const seen = snaps === 0 ? 0 : (counts[k] as number) / snaps;
    fit.shares[node * fit.classes + k] = weight * seen + (1 - weight) * (prior[k] as number);
  }
  fit.ownWeight[node] = weight;
  fit.concentration[node] = (weight === 0 ? 0 : cell.worth) + priorWorth(fit, cell);
}

/** What a prior is worth: no more than its strength, and no more than the knowledge of the cell it comes from. */
function priorWorth(fit: ChainFit, { node, parent, strength, most }: CellEvidence): number {
  const worth = Math.min(strength, most);
  return node === 0 ? worth : 1 / (1 / worth + 1 / (fit.concentration[parent] as number));
}

function emptyFit(tree: ChainTree, classes: number): ChainFit {
  const nodes = tree.parent.length;
  return {
    classes,
    shares: new Float64Array(nodes * classes),
    concentration: new Float64Array(nodes),
    ownWeight: new Float64Array(nodes),
  };
}

function sharesAt(fit: ChainFit, node: number): Float64Array {
  return fit.shares.subarray(node * fit.classes, (node + 1) * fit.classes);
}

/** Keeps the ratio of two nearly impossible shares near 1. */
const RARE = 0.0005;

function ratioOf(shares: Float64Array, base: Float64Array): Float64Array {
  return shares.map((share, k) => (share + RARE) / ((base[k] as number) + RARE));
}

function shifted(base: Float64Array, ratio: Float64Array): Float64Array {
  const moved = base.map((share, k) => share * (ratio[k] as number));
  const total = moved.reduce((sum, share) => sum + share, 0);
  return moved.map((share) => share / total);
}

function scaled(shares: Float64Array, total: number): Float64Array {
  return shares.map((share) => share * total);
}
