import { fitChain } from '../forecast/chain.ts';
import type { ChainStrengths } from '../forecast/chain-data.ts';
import type { TargetCodes } from '../forecast/chain-tally.ts';
import { type ChainTally, subtractTally, sumTallies, tallyGame } from '../forecast/chain-tally.ts';
import { chainTree } from '../forecast/chain-tree.ts';
import type { LeftOutShares } from '../forecast/left-out-shares.ts';
import type { SnapCells } from '../snap/snap-cells.ts';

/** A question a reader of our film asks, and what he knows when he asks it. */
export interface OwnQuestion {
  readonly target: TargetCodes;
  /** What he knows, coarse to fine; 255 where it was not charted. */
  readonly levels: readonly Uint8Array[];
  /** Snaps the cell above is worth, one per level. */
  readonly strengths: readonly number[];
}

/**
 * What the forecast's chain, fitted to our own film, expects on each of our snaps from the other games alone: the model
 * we read opponents with, turned on us.
 *
 * @param games - our snaps by game
 * @param size - number of snaps
 */
export function ownLeftOut(
  { target, levels, strengths }: OwnQuestion,
  games: readonly (readonly number[])[],
  size: number,
): LeftOutShares {
  const { classes } = target;
  const tree = chainTree(levels, size);
  const tallies = games.map((rows) => tallyGame(tree, target, rows));
  const whole = sumTallies(tree, classes, tallies);
  const result = { classes, shares: new Float64Array(size * classes) };
  games.forEach((rows, g) => {
    const own = subtractTally(whole, tallies[g] as ChainTally);
    const { shares } = fitChain({ tree, own, archive: null, strengths: chainStrengths(strengths) });
    for (const row of rows) {
      const node = tree.nodeOf[row] as number;
      result.shares.set(shares.subarray(node * classes, (node + 1) * classes), row * classes);
    }
  });
  return result;
}

/**
 * Levels of the chain that reads our snaps at the line. A level that is not charted ends the path, and our own sheets
 * seldom tell score, clock and the quarterback's depth: the situation comes first, the moment last.
 */
export function ownLineLevels({ situation, receivers, backSpot, moment }: SnapCells): readonly Uint8Array[] {
  return [situation, receivers, backSpot, moment];
}

/** Intervals are not read off these chains, so the terms that only widen intervals do not matter. */
function chainStrengths(own: readonly number[]): ChainStrengths {
  return { own, fixed: true, gameToGame: 30, offenseToOffense: 30 };
}

/**
 * Strengths of the chains that read a defense. Chosen by mean log loss of the next game on open professional play data of
 * 2022 (play-by-play nflverse, CC BY 4.0; charting FTN Data and participation NFL NextGenStats via nflverse, CC BY-SA
 * 4.0): 32 defenses, four games to the next, grid 1, 2, 4 … 256, 1024 and complete pooling. `coverageBySituation`, and
 * situation and moment below the path: 2,877 pressures. The path itself is judgment: those data tell only how many
 * rushed, which says little of the coverage (32 was best there), while our paths are taught with their coverages. So is
 * the situation in `pressure` and `coverage`: professional defenses hardly change with it (256 was best on 16,341
 * dropbacks, 64 on 14,452), but a staff that calls by situation must not be shown its own call sheet as a tell. The
 * moment there was measured (64), receivers and back spot are judgment, as in the opponent's chains.
 */
export const OWN_STRENGTHS = {
  coverageBySituation: [32, 32],
  coverageByPath: [4, 16, 64],
  pressure: [8, 64, 64, 64],
  coverage: [8, 64, 64, 64],
} as const satisfies Readonly<Record<string, readonly number[]>>;
