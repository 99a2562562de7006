import { mean, standardError } from '../../stats/mean.ts';
import { type Share, share } from '../../stats/share.ts';
import { TARGETS, type Target } from '../forecast/forecast-result.ts';
import type { TargetReview } from './log-score.ts';
import type { Review } from './review.ts';

/** One target over the season's games: mean log loss a snap, lower is better, games weighted alike. */
export interface SeasonTarget {
  readonly target: Target;
  readonly games: number;
  readonly snaps: number;
  readonly model: number;
  readonly plainRate: number;
  readonly rawCell: number;
  /** Games in which the forecast beat the plain rate. */
  readonly gamesWon: number;
  /** Mean over games of model less plain rate, and its standard error; null under three games. */
  readonly difference: number;
  readonly standardError: number | null;
  /** Of a yes or no: mean forecast and how often it came; null for more classes. */
  readonly yes: { readonly forecast: number; readonly came: Share } | null;
}

/** Fewer games give no standard error worth showing; judgment. */
const LEAST_FOR_ERROR = 3;

/** Every target that was charted in at least one game, in the order of the page. */
export function seasonTargets(reviews: readonly Review[]): readonly SeasonTarget[] {
  return TARGETS.flatMap((target) => {
    const games = reviews.flatMap(({ scores }) => scores.filter((score) => score.target === target));
    return games.length === 0 ? [] : [targetOf(target, games)];
  });
}

function targetOf(target: Target, games: readonly TargetReview[]): SeasonTarget {
  const differences = games.map(({ difference }) => difference);
  const pairs = games.flatMap((game) => game.pairs);
  const forecasts = pairs.map(({ forecast }) => forecast);
  return {
    target,
    games: games.length,
    snaps: games.reduce((sum, { snaps }) => sum + snaps, 0),
    model: mean(games.map(({ model }) => model)),
    plainRate: mean(games.map(({ plainRate }) => plainRate)),
    rawCell: mean(games.map(({ rawCell }) => rawCell)),
    gamesWon: differences.filter((difference) => difference < 0).length,
    difference: mean(differences),
    standardError: games.length < LEAST_FOR_ERROR ? null : standardError(differences),
    yes:
      pairs.length === 0
        ? null
        : { forecast: mean(forecasts), came: share(pairs.filter(({ came }) => came === 1).length, pairs.length) },
  };
}
