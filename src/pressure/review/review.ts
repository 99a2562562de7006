import { type Film, rowsOf, textAt } from '../../game/film.ts';
import { plainName } from '../../game/plain-name.ts';
import { type ArchiveWeight, archiveWeight } from '../archive/archive-weight.ts';
import type { WeekPlan } from '../plan/week-plan.ts';
import { type CountCheck, checkCounts } from './count-range.ts';
import { type FirstSeen, firstSeen } from './first-seen.ts';
import { type GameGrades, gradeGame } from './grade.ts';
import { type GameGuesses, gameGuesses } from './guess.ts';
import { reviewScores, type TargetReview } from './log-score.ts';
import { type RangeReview, rangeHits } from './range-hits.ts';
import { type GameFit, ruleRecord } from './rule-record.ts';
import { reviewTells, type TellReview } from './tell.ts';
import { type WhatHurt, whatHurt } from './what-hurt.ts';

/** Where Sunday's forecast came from: the saved plan, or worked out again from the folder without the game. */
export type SundaySource = 'saved' | 'saved_of_other_inputs' | 'worked_out_again';

/** A finished game against Sunday's plan; kept as review.json for the season page. */
export interface Review {
  readonly schema: 'pressure-plan.review/4';
  readonly version: string;
  /** Name of the week's folder. */
  readonly week: string;
  readonly opponent: string;
  readonly us: string;
  readonly date: string;
  readonly invented: boolean;
  readonly sunday: SundaySource;
  readonly gameSnaps: number;
  /** Games of the sheet that Sunday's film held already; what is said of them is not a forecast. */
  readonly seenBefore: readonly string[];
  readonly scores: readonly TargetReview[];
  readonly counts: readonly CountCheck[];
  readonly ranges: RangeReview;
  readonly tells: readonly TellReview[];
  /** Null when our own calls of the game were not charted. */
  readonly grades: GameGrades | null;
  readonly guesses: GameGuesses | null;
  /** Our calls marked by the rules on what then came; null when not charted. */
  readonly fit: GameFit | null;
  readonly hurt: WhatHurt;
  /** What the game showed that Sunday's film did not. */
  readonly firstSeen: readonly FirstSeen[];
  /** The base rates Sunday's forecast had. */
  readonly archive: ArchiveWeight;
}

/** What a review is made from. */
export interface ReviewInput {
  readonly plan: WeekPlan;
  readonly week: string;
  readonly sunday: SundaySource;
  /** The opponent's snaps of the game. */
  readonly game: Film;
  /** Our calls of the game, completed from the library; null when not charted. */
  readonly ours: Film | null;
  /** Film that Sunday's plan was made from. */
  readonly film: Film;
  readonly archive: Film | null;
  /** Our own film before the game. */
  readonly earlierFilm: Film | null;
}

/** The Monday review. Pure: the same plan and charts give the same review. */
export function reviewWeek(input: ReviewInput): Review {
  const { plan, game, ours } = input;
  const cuts = plan.settings.situations;
  const counts = checkCounts(plan.forecast, game, cuts);
  return {
    schema: 'pressure-plan.review/4',
    version: plan.version,
    week: input.week,
    opponent: plan.opponent,
    us: plan.us,
    date: plan.settings.date ?? plan.date,
    invented: plan.film.invented,
    sunday: input.sunday,
    gameSnaps: game.size,
    seenBefore: seenBefore(plan, game),
    scores: reviewScores(plan.forecast, game, cuts),
    counts,
    ranges: rangeHits(counts),
    tells: reviewTells(plan.forecast.tells.tells, game, cuts),
    grades: ours ? gradeGame(ours, plan.scores, cuts) : null,
    guesses: ours ? gameGuesses(input.earlierFilm, ours, cuts) : null,
    fit: ours ? ruleRecord({ rules: plan.fit.rules, library: plan.library, ours, game, cuts }) : null,
    hurt: whatHurt(ours ?? game, cuts),
    firstSeen: firstSeen({ game, film: input.film, cuts }),
    archive: archiveWeight({
      chart: input.film,
      archive: input.archive,
      settings: plan.settings,
      forecast: plan.forecast,
    }),
  };
}

function seenBefore(plan: WeekPlan, game: Film): string[] {
  const known = new Set(plan.film.games.flatMap(({ game: name }) => (name === null ? [] : [plainName(name)])));
  const played = new Set(rowsOf(game).flatMap((row) => textAt(game, 'game', row) ?? []));
  return [...played].filter((name) => known.has(plainName(name)));
}
