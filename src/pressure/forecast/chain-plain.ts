import { copyShares, emptyCell, settle } from './chain-cell.ts';
import { type Counted, independentCounts, openCell, strengthOf } from './chain-counted.ts';
import type { ChainData } from './chain-data.ts';
import { type ChainFit, emptyFit, sharesAt } from './chain-fit.ts';
import { type LevelWorth, learnLevel } from './chain-level.ts';
import { ROOT_PRIOR } from './chain-root.ts';
import { allNodes } from './chain-tree.ts';
import { beliefOnGrid, CELL_WORTHS } from './worth-grid.ts';

/** What a chain without anything behind it is fitted to. */
export type PlainData = Pick<ChainData, 'tree' | 'strengths' | 'nodes' | 'ownLevels'>;

/** Each cell is its own snaps and the cell above; how much the cells of the first level differ is learned from them. */
export function fitPlain(data: PlainData, counted: Counted): ChainFit {
  const { tree } = data;
  const { classes } = counted.tally;
  const fit = emptyFit(tree, classes);
  const cell = emptyCell(classes);
  const nodes = data.nodes ?? allNodes(tree);
  let level: LevelWorth | null = null;
  for (let i = 0; i < nodes.length; i++) {
    const node = nodes[i] as number;
    cell.node = node;
    openCell(cell, data, counted);
    if (node === 0) {
      cell.prior.fill(1 / classes);
      cell.strength = cell.most = ROOT_PRIOR * classes;
    } else {
      copyShares(fit.shares, cell.parent * classes, cell.prior);
      if (tree.depth[node] === 1) level ??= plainLevel(data, counted, sharesAt(fit, 0));
      cell.strength = plainStrength(data, node) ?? strengthOf(cell, level as LevelWorth, (worth) => worth);
    }
    settle(fit, cell);
  }
  return fit;
}

/** Whether the offense's own snaps speak for a cell of this depth. */
export function speaksFor({ tree, ownLevels }: Pick<ChainData, 'tree' | 'ownLevels'>, node: number): boolean {
  return ownLevels === undefined || (tree.depth[node] as number) <= ownLevels;
}

/** A constant strength; undefined where it is learned. */
function plainStrength(data: PlainData, node: number): number | undefined {
  const { tree, strengths } = data;
  const depth = tree.depth[node] as number;
  if (!speaksFor(data, node)) return Number.POSITIVE_INFINITY;
  if (depth === 1 && strengths.fixed === undefined) return undefined;
  return strengths.own[depth - 1] ?? Number.POSITIVE_INFINITY;
}

/** Spread of the belief in the worth of the first cells, as standard deviation of its logarithm. */
const SPREAD = 1;
/** Its middle where none is given. */
const MEDIAN = 128;

function plainLevel({ tree, strengths }: PlainData, counted: Counted, flat: Float64Array): LevelWorth {
  const belief = beliefOnGrid({ median: strengths.own[0] ?? MEDIAN, spread: SPREAD }, CELL_WORTHS);
  const countsAt = independentCounts(counted);
  return learnLevel({ tree, belief, countsAt, flat, patternAt: null, carried: (worth) => worth });
}
