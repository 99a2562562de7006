import { filmWeight } from '../forecast/chain-root.ts';
import { leagueWorth } from '../forecast/league-worth.ts';

/** Snaps an assumed rate weighs against their own, where no other offense's film says how much offenses differ; judgment. */
export const ASSUMED_WORTH = 10;

/** Snaps one game is worth as evidence of the next for a staff's protection rules; judgment, as in the forecast. */
const GAME_TO_GAME = 30;

/** The counts of one piece of the protection. */
export interface PieceCounts {
  /** Passes by class, on this opponent's film. */
  readonly own: readonly number[];
  readonly games: number;
  /** The same of each other offense. */
  readonly others: readonly { readonly counts: readonly number[]; readonly games: number }[];
  /** The rates of the others together, above 0, summing to 1. */
  readonly base: readonly number[];
}

/**
 * Snaps the other offenses' rate weighs against their own, learned as in the forecast: from how much the others differ,
 * and from the opponent's own film.
 */
export function baseWorth({ own, games, others, base }: PieceCounts): number {
  const charted = others.filter(({ counts }) => counts.some((count) => count > 0));
  const snaps = own.reduce((sum, count) => sum + count, 0);
  if (charted.length === 0 || snaps === 0 || base.some((share) => share <= 0)) return ASSUMED_WORTH;
  const league = charted.map(({ counts, games: played }) => ({ counts: Float64Array.from(counts), games: played }));
  const archive = leagueWorth(league, { classes: own.length, gameToGame: GAME_TO_GAME });
  const perGame = snaps / Math.max(1, games);
  const worth = snaps / (1 + Math.max(0, perGame - 1) / (GAME_TO_GAME + 1));
  const { weight } = filmWeight({ counts: Float64Array.from(own), worth, league: Float64Array.from(base), archive });
  return (snaps * (1 - weight)) / weight;
}
