import { type Review, reviewWeek } from '../pressure/review/review.ts';
import { type Season, seasonOf } from '../pressure/review/season.ts';
import { earlierReviews } from './earlier-reviews.ts';
import { readGame } from './read-game.ts';
import { sealed } from './seal.ts';
import type { Listener, OutputFile, SeasonWeek } from './store.ts';
import { UserProblem } from './user-problem.ts';
import { planSaidOnSunday } from './week-plan-source.ts';

/** A finished game reviewed, with its files, named as they are written into the week's out folder. */
export interface Monday {
  readonly review: Review;
  readonly season: Season;
  /** Rows of the game's sheets kept out of the numbers. */
  readonly faults: number;
  readonly pages: readonly OutputFile[];
}

/**
 * Judges Sunday's plan and our calls on the finished game, and puts the season so far together; nothing is written.
 *
 * @throws UserProblem when no game was charted
 */
export async function mondayPages(at: SeasonWeek, listener: Listener): Promise<Monday> {
  const { week, inputs, plan, sunday } = await planSaidOnSunday(at, listener);
  const played = await readGame(at, { opponent: plan.opponent, library: week.library });
  for (const line of played.named) listener.note(line);
  if (played.game.size === 0) throw new UserProblem('faults', `no usable snap of ${plan.opponent} in the game sheet`);
  const review = reviewWeek({
    plan,
    week: at.week,
    sunday,
    game: played.game,
    ours: played.ours,
    film: week.chart,
    archive: week.archive,
    earlierFilm: week.ownFilm,
  });
  const before = await earlierReviews(at);
  for (const problem of before.problems) listener.note(problem);
  const reviews = [...before.reviews, review];
  const season = seasonOf(reviews, before.notReviewed);
  const { renderReview } = await import('../report/review/render-review.ts');
  const { renderSeason } = await import('../report/review/render-season.ts');
  const pages = [
    { name: 'review.html', text: await renderReview(review) },
    { name: 'review.json', text: sealed(review, inputs, at.platform.digest).text },
    { name: 'season.html', text: await renderSeason(season, reviews) },
  ];
  return { review, season, faults: played.faults, pages };
}
