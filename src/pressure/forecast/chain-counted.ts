import { type CellEvidence, copyShares } from './chain-cell.ts';
import type { ChainData } from './chain-data.ts';
import type { LevelWorth } from './chain-level.ts';
import { type ChainTally, nodeTotal } from './chain-tally.ts';
import { CELL_WORTHS } from './worth-grid.ts';

/** Snaps of every cell, and how many independent ones they are worth. */
export interface Counted {
  readonly tally: ChainTally;
  /** Independent snaps of a node. */
  readonly worthOf: (node: number) => number;
}

/** Reads a cell at its node: the cell above, its snaps and what they are worth. */
export function openCell(
  cell: CellEvidence,
  { tree, strengths }: Pick<ChainData, 'tree' | 'strengths'>,
  { tally, worthOf }: Counted,
): void {
  const { node } = cell;
  cell.parent = tree.parent[node] as number;
  copyShares(tally.counts, node * tally.classes, cell.counts);
  cell.worth = worthOf(node);
  cell.most = strengths.cellToCell ?? Number.POSITIVE_INFINITY;
}

/** An offense's own snaps: those of one game are alike. */
export function ownCounts({ own, strengths }: ChainData): Counted {
  return { tally: own, worthOf: (node) => effectiveSnaps(own, node, strengths.gameToGame) };
}

/** Snaps of a node as independent evidence: those of one game are alike (Kish's design effect for clusters). */
export function effectiveSnaps(tally: ChainTally, node: number, gameToGame: number): number {
  const snaps = nodeTotal(tally, node);
  if (snaps === 0) return 0;
  const perGame = snaps / (tally.games[node] as number);
  return snaps / (1 + Math.max(0, perGame - 1) / (gameToGame + 1));
}

/** The snaps of a cell cut down to independent ones; null where it has none. */
export function independentCounts({ tally, worthOf }: Counted): (node: number) => Float64Array | null {
  const { classes, counts } = tally;
  return (node) => {
    const snaps = nodeTotal(tally, node);
    if (snaps === 0) return null;
    const share = worthOf(node) / snaps;
    return counts.slice(node * classes, (node + 1) * classes).map((count) => count * share);
  };
}

/**
 * The one strength that gives a cell's snaps the mean weight over the chances of each worth.
 *
 * @param carried - snaps that what is expected of the cell can carry, of a worth of the grid
 */
export function strengthOf(
  { counts, worth: own }: Pick<CellEvidence, 'counts' | 'worth'>,
  { chances }: LevelWorth,
  carried: (worth: number) => number,
): number {
  const snaps = counts.reduce((sum, count) => sum + count, 0);
  let [weight, inverse] = [0, 0];
  for (let i = 0; i < CELL_WORTHS.length; i++) {
    const worth = carried(CELL_WORTHS[i] as number);
    weight += ((chances[i] as number) * own) / (own + worth);
    inverse += (chances[i] as number) / worth;
  }
  return snaps === 0 ? 1 / inverse : (snaps * (1 - weight)) / weight;
}
