import { betaBinomialPmf } from '../../stats/beta-binomial.ts';
import { sumOf } from './against-others.ts';
import type { GameCount } from './cross-count.ts';
import { gameEffect } from './game-effect.ts';

/** The share expected, 0 to 1, and what was asked. */
export interface ExpectedShare {
  readonly expected: number;
  readonly question: string;
}

/**
 * Chance of a count at least this far from what was expected, both sides, when games differ as they usually do: the
 * beta-binomial with the games' design effect.
 *
 * @returns 1 where nothing can be tested: no snap, or a share of 0 or 1 expected
 */
export function clusteredP(games: readonly GameCount[], { expected, question }: ExpectedShare): number {
  const { count, trials } = sumOf(games);
  if (trials === 0 || expected <= 0 || expected >= 1) return 1;
  const alike = gameEffect(
    games.map((game) => game.trials),
    question,
  );
  const concentration = alike > 0 ? 1 / alike - 1 : Number.POSITIVE_INFINITY;
  const pmf = betaBinomialPmf({ trials, mean: expected, concentration });
  let [below, above] = [0, 0];
  pmf.forEach((chance, k) => {
    if (k <= count) below += chance;
    if (k >= count) above += chance;
  });
  return Math.min(1, 2 * Math.min(below, above));
}
