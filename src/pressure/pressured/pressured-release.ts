import { type Film, numberAt } from '../../game/film.ts';
import { mean as meanOf, meanOrNull } from '../../stats/mean.ts';
import { normalWidth } from '../../stats/normal.ts';
import { effectiveSnaps } from '../others/game-effect.ts';
import type { OffenseGame } from '../snap/offense-game.ts';
import type { PressuredRelease } from './pressured-result.ts';

/**
 * Throws their mean over all throws is worth in the mean of one group; as for a share within 2.5 seconds, which 64 to 512
 * forecast about as well on open professional play data of 2022.
 */
const OVERALL_WORTH = 128;

/** The timed throws of a chart, game by game. */
export interface TimedThrows {
  readonly games: readonly { readonly rows: readonly number[]; readonly seconds: readonly number[] }[];
  /** Mean and standard deviation over all of them; null under two throws. */
  readonly mean: number | null;
  readonly deviation: number;
}

/** Reads the release times once. */
export function timedThrows(film: Film, games: readonly OffenseGame[]): TimedThrows {
  const timed = games.map(({ rows }) => {
    const thrown = rows.filter((row) => numberAt(film, 'time_to_throw', row) !== undefined);
    return { rows: thrown, seconds: thrown.map((row) => numberAt(film, 'time_to_throw', row) as number) };
  });
  const all = timed.flatMap(({ seconds }) => seconds);
  if (all.length < 2) return { games: timed, mean: null, deviation: 0 };
  const mean = meanOf(all);
  const squares = all.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  return { games: timed, mean, deviation: Math.sqrt(squares / (all.length - 1)) };
}

/**
 * How fast the ball is out on some of the throws: their mean, and the mean shrunk toward that of all throws (normal
 * means with a common spread, snaps of one game counted for less).
 *
 * @param inGroup - whether a snap belongs to the group
 * @see Morris 1983, Journal of the American Statistical Association 78:47
 */
export function releaseIn(
  { games, mean, deviation }: TimedThrows,
  inGroup: (row: number) => boolean,
): PressuredRelease {
  const byGame = games.map(({ rows, seconds }) => seconds.filter((_, i) => inGroup(rows[i] as number)));
  const thrown = byGame.flat();
  const own = meanOrNull(thrown);
  if (mean === null) return { timed: thrown.length, mean: own, shrunk: null, low: null, high: null };
  const trials = byGame.map((one) => one.length);
  const worth = effectiveSnaps(trials, 'quick_release');
  const shrunk = (worth * (own ?? mean) + OVERALL_WORTH * mean) / (worth + OVERALL_WORTH);
  const half = (normalWidth(0.95) * deviation) / Math.sqrt(worth + OVERALL_WORTH);
  return { timed: thrown.length, mean: own, shrunk, low: shrunk - half, high: shrunk + half };
}
