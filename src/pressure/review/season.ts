import type { Calibration } from '../../stats/scores.ts';
import { type RangeReview, rangeHits } from './range-hits.ts';
import type { Review } from './review.ts';
import { type CalibrationBin, calibrationBins, calibrationLine } from './season-calibration.ts';
import { type SeasonFamily, seasonFamilies } from './season-family.ts';
import { type GuessTrend, guessTrend } from './season-guess.ts';
import { type SeasonFit, seasonFit } from './season-rule.ts';
import { type SeasonTarget, seasonTargets } from './season-target.ts';

/** The season so far, from the reviews of its weeks. */
export interface Season {
  readonly schema: 'pressure-plan.season/1';
  readonly us: string;
  readonly invented: boolean;
  readonly games: readonly { readonly week: string; readonly opponent: string; readonly snaps: number }[];
  /** Earlier weeks with a charted game and no review of this version. */
  readonly notReviewed: readonly string[];
  readonly targets: readonly SeasonTarget[];
  readonly ranges: RangeReview;
  /** All forecasts of a yes or no, sorted into fifths of the scale. */
  readonly bins: readonly CalibrationBin[];
  readonly line: Calibration;
  readonly families: readonly SeasonFamily[];
  readonly guesses: GuessTrend;
  /** How the rules of fit have done; null where no game was marked. */
  readonly fit: SeasonFit | null;
  readonly tells: { readonly held: number; readonly died: number; readonly tooFew: number };
}

/** Under this many games nothing is called a habit of the season; judgment. */
export const LEAST_GAMES = 3;

/**
 * Puts the reviews of a season together. Everything is a sum or a mean over games; with few games the numbers stand
 * without a verdict.
 *
 * @param reviews - in the order of the weeks
 * @param notReviewed - weeks that were charted and have no review
 */
export function seasonOf(reviews: readonly Review[], notReviewed: readonly string[]): Season {
  const tells = reviews.flatMap((review) => review.tells);
  const counted = (verdict: string) => tells.filter((tell) => tell.verdict === verdict).length;
  const pairs = reviews.flatMap(({ scores }) => scores.flatMap((score) => score.pairs));
  return {
    schema: 'pressure-plan.season/1',
    us: reviews.at(-1)?.us ?? '',
    invented: reviews.some(({ invented }) => invented),
    games: reviews.map(({ week, opponent, gameSnaps }) => ({ week, opponent, snaps: gameSnaps })),
    notReviewed,
    targets: seasonTargets(reviews),
    ranges: rangeHits(reviews.flatMap(({ counts }) => counts)),
    bins: calibrationBins(pairs),
    line: calibrationLine(pairs),
    families: seasonFamilies(reviews),
    guesses: guessTrend(reviews),
    fit: seasonFit(reviews),
    tells: { held: counted('held'), died: counted('died'), tooFew: counted('too_few') + counted('not_seen') },
  };
}
