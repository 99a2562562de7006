import { betaBinomialInterval } from '../../stats/beta-binomial.ts';
import type { Interval } from '../../stats/interval.ts';

/** Snaps the knowledge of a share is worth, for a count in the next game. */
export interface NextCountTask {
  readonly trials: number;
  /** Forecast share, 0 to 1. */
  readonly mean: number;
  /** Snaps the forecast share is worth. */
  readonly concentration: number;
  /** Snaps one game is worth as evidence of the next. */
  readonly gameToGame: number;
}

/**
 * Snaps a forecast share is worth as knowledge of one game to come: what is not known of the long-run share, and how
 * much an offense changes from game to game, add up as variances.
 */
export function nextGameConcentration({ concentration, gameToGame }: Omit<NextCountTask, 'trials' | 'mean'>): number {
  return 1 / (1 / concentration + 1 / gameToGame);
}

/** Central 95% range of a count in the next game, in snaps. */
export function nextCountInterval({ trials, mean, ...worth }: NextCountTask): Interval {
  return betaBinomialInterval({ trials, mean, concentration: nextGameConcentration(worth), level: 0.95 });
}
