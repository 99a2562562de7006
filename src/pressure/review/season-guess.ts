import { type Difference, newcombeDifference } from '../../stats/difference.ts';
import type { Share } from '../../stats/share.ts';
import type { Review } from './review.ts';

/** How often a reader of our earlier film would have named our coverage, game by game. */
export interface GuessTrend {
  readonly games: readonly {
    readonly week: string;
    readonly opponent: string;
    /** Our earlier pressures he has read. */
    readonly read: number;
    readonly fromPath: Share;
    readonly blind: Share;
  }[];
  /** The last game's rate from the path less that of the games before it; minus is good. Null under two games. */
  readonly change: Difference | null;
}

/** The guess rates of the games with charted calls; how the last compares with those before it. */
export function guessTrend(reviews: readonly Review[]): GuessTrend {
  const games = reviews.flatMap(({ week, opponent, guesses }) => (guesses ? [{ week, opponent, ...guesses }] : []));
  const [last, before] = [games.at(-1), games.slice(0, -1)];
  if (!last || before.length === 0) return { games, change: null };
  const sum = (of: (share: Share) => number) => before.reduce((total, game) => total + of(game.fromPath), 0);
  const change = newcombeDifference({
    x1: last.fromPath.count,
    n1: last.fromPath.trials,
    x2: sum(({ count }) => count),
    n2: sum(({ trials }) => trials),
  });
  return { games, change };
}
