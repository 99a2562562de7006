import { emptyCell, settle, shiftBase } from './chain-cell.ts';
import { type Counted, effectiveSnaps, independentCounts, openCell, ownCounts, strengthOf } from './chain-counted.ts';
import type { ChainArchive, ChainData } from './chain-data.ts';
import { type ChainFit, emptyFit, sharesAt, sharesOnSnaps } from './chain-fit.ts';
import { type LevelWorth, learnLevel, mixed } from './chain-level.ts';
import { fitPlain, speaksFor } from './chain-plain.ts';
import { rake } from './chain-rake.ts';
import { settleRoot } from './chain-root.ts';
import { nodeTotal } from './chain-tally.ts';
import { allNodes } from './chain-tree.ts';
import { averageWorth } from './league-worth.ts';
import { beliefOnGrid, CELL_WORTHS } from './worth-grid.ts';

/**
 * Fits the Dirichlet-multinomial chain. Without an archive each cell is its own snaps and the cell above. With one, all
 * snaps are the film's shares and the archive's on the same cells, by a weight learned from both; below, the place of
 * the cell above is taken by the archive's rate of the cell, moved by one ratio a class so that the cells add up to the
 * cell above on the offense's own snaps. How much the cells of the first level are worth to one another, and whether the
 * offense follows the archive's pattern in them, is learned from the film; deeper levels have a constant strength.
 *
 * @see the back-off chain mean_k = (x_k + M_k mean_(k-1)) / (n_k + M_k), MacKay and Peto 1995, Natural Language
 * Engineering 1:289
 */
export function fitChain(data: ChainData): ChainFit {
  if (data.archive === null) return fitPlain(data, ownCounts(data));
  const { tree, archive, strengths, base = archiveFit({ tree, archive, strengths }) } = data;
  const unseen = Array.from({ length: base.classes }, (_, k) => archive.tally.counts[k] === 0);
  if (!unseen.includes(true)) return fitShifted(data, base, archive);
  return fitShifted(data, withUnseenLent(base, fitPlain(data, ownCounts(data)), unseen), archive);
}

/**
 * Snaps the cell above is worth in a league's own deeper cells. On open professional film 16 to 64 changed the log loss of
 * the next game by at most .0014.
 */
const LEAGUE_DEEPER = 32;

/** The chain of the archive alone, as it stands behind every offense fitted with it. */
export function archiveFit({
  tree,
  archive: { tally },
  strengths,
}: Pick<ChainData, 'tree' | 'strengths'> & { readonly archive: ChainArchive }): ChainFit {
  const own = strengths.own.map((strength, i) => (i === 0 ? strength : LEAGUE_DEEPER));
  return fitPlain({ tree, strengths: { ...strengths, own } }, { tally, worthOf: (node) => nodeTotal(tally, node) });
}

/**
 * A class the archive never shows was not separated there: it keeps the offense's own share, and the archive speaks
 * of the rest.
 */
function withUnseenLent(base: ChainFit, plain: ChainFit, unseen: readonly boolean[]): ChainFit {
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

/** Belief in what the league's rate of a situation is worth, in snaps, once it is moved to the offense's own level. */
const SITUATION_BELIEF = beliefOnGrid({ median: 128, spread: 1 }, CELL_WORTHS);

/**
 * Snaps the league's rate of a deeper cell is worth, at the level of the cell above. One of a few round numbers compared
 * on open professional film of 2022 (play-by-play nflverse, CC BY 4.0; charting FTN Data via nflverse, CC BY-SA 4.0), on
 * which the forecast hardly depends; a strength learned for each level gained nothing there.
 */
const DEEPER_STRENGTH = 256;

function fitShifted(data: ChainData, base: ChainFit, archive: ChainArchive): ChainFit {
  const { tree, nodes = allNodes(tree) } = data;
  const counted = ownCounts(data);
  const fit = emptyFit(tree, base.classes);
  const expected = expectedOf(data, base, fit);
  const cell = emptyCell(base.classes);
  let level: LevelWorth | null = null;
  settleRoot(fit, rootEvidence(data, base, archive));
  for (let i = 0; i < nodes.length; i++) {
    const node = nodes[i] as number;
    if (node === 0) continue;
    cell.node = node;
    openCell(cell, data, counted);
    expected(node, cell.prior);
    const carried = (worth: number) => trusted(worth, archive, node);
    if (tree.depth[node] === 1) {
      level ??= shiftedLevel(data, { counted, fit, expected, archive });
      cell.prior.set(mixed(cell.prior, sharesAt(fit, 0), level.pattern));
      cell.strength = strengthOf(cell, level, carried);
    } else cell.strength = speaksFor(data, node) ? carried(DEEPER_STRENGTH) : Number.POSITIVE_INFINITY;
    settle(fit, cell);
  }
  return fit;
}

function rootEvidence({ own, strengths }: ChainData, base: ChainFit, { tally, offenses, worth }: ChainArchive) {
  const snaps = nodeTotal(own, 0);
  const league = snaps === 0 ? sharesAt(base, 0) : sharesOnSnaps(base, own).map((share) => share / snaps);
  return {
    counts: own.counts.slice(0, own.classes),
    worth: effectiveSnaps(own, 0, strengths.gameToGame),
    league,
    archive: worth ?? { offenses, snaps: nodeTotal(tally, 0) },
    most: strengths.offenseToOffense,
  };
}

/** Writes the archive's shares of a cell, moved to the offense's own level in the cell above. */
type Expected = (node: number, into: Float64Array) => void;

/** The ratios of each cell above are worked out when they are first asked for, and kept. */
function expectedOf({ tree, own }: ChainData, base: ChainFit, fit: ChainFit): Expected {
  const { classes } = base;
  const ratios = new Float64Array(base.shares.length);
  const known = new Uint8Array(tree.parent.length);
  return (node, into) => {
    const parent = tree.parent[node] as number;
    const mine = ratios.subarray(parent * classes, (parent + 1) * classes);
    if (known[parent] === 0) rake({ tree, base, node: parent, target: sharesAt(fit, parent), own }, mine);
    known[parent] = 1;
    into.set(mine);
    shiftBase(base, { node, prior: into });
  };
}

interface ShiftedLevel {
  readonly counted: Counted;
  readonly fit: ChainFit;
  readonly expected: Expected;
  readonly archive: ChainArchive;
}

function shiftedLevel({ tree }: ChainData, { counted, fit, expected, archive }: ShiftedLevel): LevelWorth {
  return learnLevel({
    tree,
    belief: SITUATION_BELIEF,
    countsAt: independentCounts(counted),
    flat: sharesAt(fit, 0),
    patternAt: (node) => {
      const shares = new Float64Array(fit.classes);
      expected(node, shares);
      return shares;
    },
    carried: (worth, node) => trusted(worth, archive, node),
  });
}

/** A strength cut down to what the archive's cell can carry. */
function trusted(strength: number, { tally, offenses, worth }: ChainArchive, node: number): number {
  return averageWorth(strength, { snaps: nodeTotal(tally, node), offenses: worth?.offenses ?? offenses });
}
