import { archiveFit, fitChain } from './chain.ts';
import { subtractTally, tallyGame } from './chain-tally.ts';
import { nodesOfFirst } from './chain-tree.ts';
import type { FittedTarget, ForecastFilm } from './forecast-film.ts';
import { TARGET_STRENGTHS } from './target-strengths.ts';

/** What the line-of-scrimmage chain expected on each own snap, from the other games and the archive only. */
export interface LeftOutShares {
  readonly classes: number;
  /** Share of class k on snap i at `i * classes + k`. */
  readonly shares: Float64Array;
}

/**
 * Forecasts every own snap with its own game left out, so that no snap helps to make its own expectation.
 *
 * @param fitted - the target's line-of-scrimmage chain
 */
export function leftOutShares(film: ForecastFilm, fitted: FittedTarget): LeftOutShares {
  const { tree, archive, definition, own: whole, target } = fitted;
  const strengths = TARGET_STRENGTHS[definition.target].line;
  const { classes } = target;
  const result = { classes, shares: new Float64Array(film.ownSize * classes) };
  const nodes = nodesOfFirst(tree, film.ownSize);
  const shared = archive === null ? {} : { base: archiveFit({ tree, archive, strengths }) };
  for (const { rows } of film.ownGames) {
    const own = subtractTally(whole, tallyGame(tree, target, rows));
    const fit = fitChain({ tree, own, archive, strengths, nodes, ...shared });
    for (const row of rows) {
      const node = tree.nodeOf[row] as number;
      result.shares.set(fit.shares.subarray(node * classes, (node + 1) * classes), row * classes);
    }
  }
  return result;
}
