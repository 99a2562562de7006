import { type ChainTally, nodeTotal } from '../chain-tally.ts';
import type { ChainTree } from '../chain-tree.ts';
import type { ChainKind } from '../forecast-film.ts';
import type { ForecastMethod, Predict } from './forecast-method.ts';
import type { WindowFilm } from './window-film.ts';

/** A cell with fewer snaps says nothing in a spreadsheet: the cell above it speaks. Common practice, no source. */
const LEAST_IN_CELL = 5;
/** Snaps of each class added to a cell, so that no class is ever impossible. @see Krichevsky and Trofimov 1981 */
const ADDED_TO_CELL = 0.5;
/** The same for a rate over all snaps. @see Laplace's rule of succession */
const ADDED_TO_RATE = 1;

/** The plain ways to forecast that a chain has to beat: what a spreadsheet of the film would say. */
export const PLAIN_METHODS: readonly ForecastMethod[] = [
  plain({ id: 'own_rate', words: 'own rate', knows: 'plan', depth: 0, of: (window) => window.own('plan') }),
  plain({
    id: 'own_down_distance',
    words: 'own rate by down and distance',
    knows: 'plan',
    depth: 1,
    of: (window) => window.own('plan'),
  }),
  plain({
    id: 'raw_cell',
    words: 'own rate of the finest cell, before the look',
    knows: 'plan',
    depth: Number.POSITIVE_INFINITY,
    of: (window) => window.own('plan'),
  }),
  plain({
    id: 'raw_cell_look',
    words: 'own rate of the finest cell, with the look',
    knows: 'line',
    depth: Number.POSITIVE_INFINITY,
    of: (window) => window.own('line'),
  }),
  plain({
    id: 'archive_rate',
    words: "other offenses' rate",
    knows: 'plan',
    depth: 0,
    of: (window) => window.archive('plan')?.tally ?? null,
  }),
  plain({
    id: 'archive_down_distance',
    words: "other offenses' rate by down and distance",
    knows: 'plan',
    depth: 1,
    of: (window) => window.archive('plan')?.tally ?? null,
  }),
];

interface PlainMethod {
  readonly id: string;
  readonly words: string;
  readonly knows: ChainKind;
  /** Deepest level of the chain's cells it looks at. */
  readonly depth: number;
  readonly of: (window: WindowFilm) => ChainTally | null;
}

function plain({ id, words, knows, depth, of }: PlainMethod): ForecastMethod {
  const fit = (window: WindowFilm): Predict | null => {
    const tally = of(window);
    if (tally === null) return null;
    const tree = window.film.trees[knows];
    return (row) => cellShares(tally, cellOf(tree, tally, { node: tree.nodeOf[row] as number, depth }));
  };
  return { id, words, knows, against: [], fit };
}

/** The snap's finest cell no deeper than asked that has snaps enough; all snaps where none has. */
function cellOf(tree: ChainTree, tally: ChainTally, from: { readonly node: number; readonly depth: number }): number {
  let { node } = from;
  while (node !== 0 && ((tree.depth[node] as number) > from.depth || nodeTotal(tally, node) < LEAST_IN_CELL)) {
    node = tree.parent[node] as number;
  }
  return node;
}

function cellShares(tally: ChainTally, node: number): Float64Array {
  const { classes } = tally;
  const added = node === 0 ? ADDED_TO_RATE : ADDED_TO_CELL;
  const total = nodeTotal(tally, node) + added * classes;
  return Float64Array.from(
    { length: classes },
    (_, k) => ((tally.counts[node * classes + k] as number) + added) / total,
  );
}
