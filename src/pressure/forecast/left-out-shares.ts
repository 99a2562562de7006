import { fitChain } from './chain.ts';
import type { ChainFit } from './chain-fit.ts';
import { nodesOfFirst } from './chain-nodes.ts';
import { sharesOnSnap } from './chain-snap.ts';
import { type ChainTally, subtractTally, tallyGame } from './chain-tally.ts';
import { pathOf } from './chain-tree.ts';
import { type FittedTarget, type ForecastFilm, fitTarget } from './forecast-film.ts';
import { splitByRunOrPass } from './split-by-run-or-pass.ts';
import { RUN_OR_PASS } from './target.ts';
import { lineStrengths } from './target-strengths.ts';

/**
 * The first levels of the line's chain are those that the own film speaks for here: look, situation and moment. What receivers and the
 * back's place tell is what tells are about; a chain that had learned it from the same film would expect its own answer.
 */
const OWN_LEVELS = 3;

/** What is expected on each own snap, from the other games and the archive only. */
export interface LeftOutShares {
  readonly classes: number;
  /** Share of class k on snap i at `i * classes + k`. */
  readonly shares: Float64Array;
}

/**
 * Forecasts every own snap with its own game left out, so that no snap helps to make its own expectation: by look, down
 * and distance from their other games, by receivers and back as the archive's offenses move with them.
 *
 * @param fitted - the target's line-of-scrimmage chain
 */
export function leftOutShares(film: ForecastFilm, fitted: FittedTarget): LeftOutShares {
  const { tree, definition, own, archive } = fitted;
  const { classes } = fitted.target;
  const result = { classes, shares: new Float64Array(film.ownSize * classes) };
  const without = fitWithout(film, fitted);
  const runOrPass = definition.runs && fitWithout(film, fitTarget(film, RUN_OR_PASS, 'line'));
  for (const { rows } of film.ownGames) {
    const answers = without(rows);
    const fit = runOrPass ? splitByRunOrPass(answers, runOrPass(rows), definition) : answers;
    for (const row of rows) {
      result.shares.set(sharesOnSnap({ tree, fit, own, archive }, pathOf(tree, row)), row * classes);
    }
  }
  return result;
}

/** The chain of a target without the snaps of one game, in the cells of the own film. */
function fitWithout(film: ForecastFilm, { tree, archive, base, definition, own, target }: FittedTarget) {
  const strengths = lineStrengths(definition.target, film.linePlaces);
  const ownLevels = film.linePlaces.filter((place) => place < OWN_LEVELS).length;
  const nodes = nodesOfFirst(tree, film.ownSize);
  return (rows: readonly number[]): ChainFit => {
    const others: ChainTally = subtractTally(own, tallyGame(tree, target, rows));
    return fitChain({ tree, own: others, archive, strengths, nodes, ownLevels, ...(base && { base }) });
  };
}
