/**
 * Snaps one game is worth as evidence of the next, by question. Those named were set on open professional play data of
 * 2022 (nflverse CC BY 4.0, FTN Data via nflverse CC BY-SA 4.0) so that 95% ranges of the next game's count held; the
 * rest is judgment, nearer to the least steady of them.
 */
const GAME_TO_GAME: Readonly<Record<string, number>> = {
  answer: 70,
  pass_answer: 70,
  run_or_pass: 36,
  screen: 160,
  quick_release: 50,
  motion: 18,
};
const OF_THE_REST = 30;

/**
 * How alike the snaps of one sample are because they come from a few games, as the intraclass correlation a beta-binomial
 * over all of them would need to spread as much.
 *
 * @param trials - snaps of each game
 * @param question - what was asked of the snaps
 * @see Kish 1965, Survey Sampling, the design effect of clusters of unequal size
 */
export function gameEffect(trials: readonly number[], question: string): number {
  const total = trials.reduce((sum, n) => sum + n, 0);
  if (total < 2) return 0;
  const pairs = trials.reduce((sum, n) => sum + n * (n - 1), 0);
  return pairs / (total * (total - 1)) / ((GAME_TO_GAME[question] ?? OF_THE_REST) + 1);
}

/** Snaps of some games as independent ones. @see {@link gameEffect} */
export function effectiveSnaps(trials: readonly number[], question: string): number {
  const total = trials.reduce((sum, n) => sum + n, 0);
  return total / (1 + Math.max(0, total - 1) * gameEffect(trials, question));
}
