import { archiveWorth } from './archive-worth.ts';
import { copyShares, emptyCell, ratiosOf, scaleShares, settle, shiftBase } from './chain-cell.ts';
import { type ChainFit, emptyFit, sharesAt, sharesOnSnaps } from './chain-fit.ts';
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
  /** The cells to fit, every one after its parent, with all that hold own snaps among them; all when absent. */
  readonly nodes?: Int32Array;
  /** What {@link archiveFit} says of this archive, where it is known already. */
  readonly base?: ChainFit;
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
  const plain = fitPlain(data, data.own);
  if (data.archive === null) return plain;
  const { tree, archive, strengths, base = archiveFit({ tree, archive, strengths }) } = data;
  return fitShifted(data, plain, { base: withUnseenLent(base, plain, archive.tally), ...archive });
}

/** The chain of the archive alone, as it stands behind every offense fitted with it. */
export function archiveFit({
  tree,
  archive,
  strengths,
}: Pick<ChainData, 'tree' | 'strengths'> & { readonly archive: NonNullable<ChainData['archive']> }): ChainFit {
  return fitPlain({ tree, strengths }, archive.tally);
}

/**
 * A class the archive never shows was not told apart there: it keeps the offense's own share, and the archive speaks
 * of the rest.
 */
function withUnseenLent(base: ChainFit, plain: ChainFit, archive: ChainTally): ChainFit {
  const unseen = Array.from({ length: base.classes }, (_, k) => archive.counts[k] === 0);
  if (!unseen.includes(true)) return base;
  const mended = { ...base, shares: base.shares.slice() };
  for (let node = 0; node < base.concentration.length; node++) {
    const [lent, kept] = [sharesAt(plain, node), sharesAt(mended, node)];
    const [lentTotal, keptTotal] = [lent, kept.slice()].map((shares) => totalWhere(shares, unseen)) as [number, number];
    kept.forEach((share, k) => {
      kept[k] = unseen[k] ? (lent[k] as number) : (share * (1 - lentTotal)) / (1 - keptTotal);
    });
  }
  return mended;
}

function totalWhere(shares: Float64Array, chosen: readonly boolean[]): number {
  return shares.reduce((sum, share, k) => (chosen[k] ? sum + share : sum), 0);
}

/** Prior count of each class at the root of a chain with nothing above it (Jeffreys). */
const ROOT_PRIOR = 0.5;

function fitPlain(data: Pick<ChainData, 'tree' | 'strengths' | 'nodes'>, tally: ChainTally): ChainFit {
  const { tree, strengths } = data;
  const { classes } = tally;
  const fit = emptyFit(tree, classes);
  const cell = emptyCell(classes);
  const nodes = data.nodes ?? allNodes(tree);
  for (let i = 0; i < nodes.length; i++) {
    const node = nodes[i] as number;
    const depth = tree.depth[node] as number;
    cell.node = node;
    cell.parent = tree.parent[node] as number;
    copyShares(tally.counts, node * classes, cell.counts);
    if (depth === 0) cell.prior.fill(1 / classes);
    else copyShares(fit.shares, cell.parent * classes, cell.prior);
    cell.strength = depth === 0 ? ROOT_PRIOR * classes : (strengths.own[depth - 1] ?? Number.POSITIVE_INFINITY);
    cell.worth = effectiveSnaps(tally, node, strengths.gameToGame);
    cell.most = depth === 0 ? cell.strength : cellCap(strengths);
    settle(fit, cell);
  }
  return fit;
}

function allNodes({ parent }: ChainTree): Int32Array {
  return Int32Array.from(parent, (_, node) => node);
}

interface ArchiveFit {
  readonly base: ChainFit;
  readonly tally: ChainTally;
  readonly offenses: number;
}

function fitShifted(data: ChainData, plain: ChainFit, archive: ArchiveFit): ChainFit {
  const { tree, own, strengths, nodes = allNodes(tree) } = data;
  const fit = emptyFit(tree, plain.classes);
  const shift = rootShift(data, plain, archive);
  const cell = emptyCell(plain.classes);
  for (let i = 0; i < nodes.length; i++) {
    const node = nodes[i] as number;
    cell.node = node;
    cell.parent = tree.parent[node] as number;
    if (node === 0) cell.prior.set(shift);
    else ratiosOf(fit, archive.base, cell);
    shiftBase(archive.base, cell);
    scaleShares(plain, nodeTotal(own, node), cell);
    cell.strength = trusted(strengths.archive[tree.depth[node] as number], archive, node);
    // Where the own film's chain pools the cell with all snaps, the cell's own snaps have no say in its share.
    const say = node === 0 ? 1 : (plain.ownWeight[node] as number);
    cell.worth = say * effectiveSnaps(own, node, strengths.gameToGame);
    cell.most = node === 0 ? strengths.offenseToOffense : cellCap(strengths);
    settle(fit, cell);
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

function cellCap({ cellToCell = Number.POSITIVE_INFINITY }: ChainStrengths): number {
  return cellToCell;
}
