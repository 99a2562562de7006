import type { Chart } from '../ingest/chart.ts';
import { type ArchiveWeight, archiveWeight } from './archive-weight.ts';
import { type GameGrades, gradeGame } from './grade.ts';
import { type GuessTonight, guessTonight } from './review-guess.ts';
import { type IntervalReview, reviewIntervals } from './review-interval.ts';
import { reviewScores, type TargetReview } from './review-score.ts';
import { reviewTells, type TellReview } from './review-tell.ts';
import type { WeekPlan } from './week-plan.ts';

/** A finished game against Sunday's plan; kept as review.json for the season page. */
export interface Review {
  readonly schema: 'pressure-plan.review/1';
  readonly version: string;
  /** Name of the week's folder. */
  readonly week: string;
  readonly opponent: string;
  readonly us: string;
  readonly date: string;
  readonly invented: boolean;
  /** Where Sunday's forecast came from. */
  readonly sunday: 'report.json' | 'worked out again';
  readonly gameSnaps: number;
  readonly scores: readonly TargetReview[];
  readonly intervals: IntervalReview;
  readonly tells: readonly TellReview[];
  /** Null when our own calls of the game were not charted. */
  readonly grades: GameGrades | null;
  readonly guesses: GuessTonight | null;
  /** The base rates as they are now for this opponent. */
  readonly archive: ArchiveWeight;
}

/** What a review is made from. */
export interface ReviewInput {
  readonly plan: WeekPlan;
  readonly week: string;
  readonly sunday: Review['sunday'];
  /** The opponent's snaps of the game. */
  readonly game: Chart;
  /** Our calls of the game, completed from the library; null when not charted. */
  readonly ours: Chart | null;
  /** Film that Sunday's plan was made from. */
  readonly film: Chart;
  readonly archive: Chart | null;
  readonly earlierFilm: Chart | null;
}

/** The Monday review. Pure: the same plan and charts give the same review. */
export function reviewWeek(input: ReviewInput): Review {
  const { plan, game, ours } = input;
  const cuts = plan.settings.situations;
  return {
    schema: 'pressure-plan.review/1',
    version: plan.version,
    week: input.week,
    opponent: plan.opponent,
    us: plan.us,
    date: plan.settings.date ?? plan.date,
    invented: plan.film.invented,
    sunday: input.sunday,
    gameSnaps: game.size,
    scores: reviewScores(plan.forecast, game, cuts),
    intervals: reviewIntervals(plan.forecast, game, cuts),
    tells: reviewTells(plan.forecast.tells.tells, game, cuts),
    grades: ours ? gradeGame(ours, plan.scores, cuts) : null,
    guesses: ours ? guessTonight(input.earlierFilm, ours, cuts) : null,
    archive: archiveWeight(input.film, input.archive, plan.settings),
  };
}
