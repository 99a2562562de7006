import { logDirichletMultinomial } from '../../stats/dirichlet-multinomial.ts';
import { scaledToOne } from '../../stats/scaled-to-one.ts';
import type { ChainTree } from './chain-tree.ts';
import { CELL_WORTHS } from './worth-grid.ts';

/** How the cells right below the root are read. */
export interface LevelWorth {
  /** Chance of each of {@link CELL_WORTHS} for what is expected of a cell. */
  readonly chances: Float64Array;
  /** Weight of the league's pattern in what is expected, 0 to 1; the rest is the share over all snaps. */
  readonly pattern: number;
}

/** What a first level is learned from. */
export interface LevelTask {
  readonly tree: ChainTree;
  /** Belief in each of {@link CELL_WORTHS} before the film. */
  readonly belief: Float64Array;
  /** Independent own snaps of each class in a cell; null where it has none. */
  readonly countsAt: (node: number) => Float64Array | null;
  /** The offense's shares over all snaps. */
  readonly flat: Float64Array;
  /** The league's shares of a cell at the offense's own level; null where there is no league, and flat is expected. */
  readonly patternAt: ((node: number) => Float64Array) | null;
  /** Snaps that what is expected of a cell can carry, of a worth of the grid. */
  readonly carried: (worth: number, node: number) => number;
}

/**
 * Weights of the league's pattern that are tried, and how likely each is before the film. On open professional film
 * of 2022 a chance of .1 or .2 for an opponent who ignores the pattern cost at most .0005 of log loss in the next game,
 * a chance of .5 up to .0010.
 */
const PATTERNS = [
  { weight: 1, chance: 0.8 },
  { weight: 0.5, chance: 0.1 },
  { weight: 0, chance: 0.1 },
] as const;

const NO_PATTERN = [{ weight: 0, chance: 1 }] as const;

/** Learns one worth for all cells of the first level, and whether the offense follows the league's pattern in them. */
export function learnLevel(task: LevelTask): LevelWorth {
  const patterns = task.patternAt === null ? NO_PATTERN : PATTERNS;
  const size = CELL_WORTHS.length;
  const logs = new Float64Array(patterns.length * size);
  patterns.forEach(({ weight, chance }, p) => {
    const belief = task.belief.map((worth) => Math.log(worth * chance));
    logs.set(addEvidence(task, weight, belief), p * size);
  });
  const joint = scaledToOne(logs);
  const chances = new Float64Array(size);
  let pattern = 0;
  joint.forEach((chance, i) => {
    chances[i % size] = (chances[i % size] as number) + chance;
    pattern += chance * (patterns[Math.floor(i / size)]?.weight ?? 0);
  });
  return { chances, pattern };
}

function addEvidence(task: LevelTask, weight: number, logs: Float64Array): Float64Array {
  const { tree, flat, patternAt, countsAt, carried } = task;
  for (let i = tree.childrenFrom[0] as number; i < (tree.childrenFrom[1] as number); i++) {
    const node = tree.children[i] as number;
    const counts = countsAt(node);
    if (counts === null) continue;
    const shares = patternAt === null ? flat : mixed(patternAt(node), flat, weight);
    for (let w = 0; w < logs.length; w++) {
      const worth = carried(CELL_WORTHS[w] as number, node);
      logs[w] = (logs[w] as number) + logDirichletMultinomial({ counts, shares, worth });
    }
  }
  return logs;
}

/** The pattern and the flat shares, the pattern by its weight. */
export function mixed(pattern: Float64Array, flat: Float64Array, weight: number): Float64Array {
  return pattern.map((share, k) => weight * share + (1 - weight) * (flat[k] as number));
}
