import type { Forecast } from '../forecast/forecast-result.ts';
import { effectiveSnaps } from '../others/game-effect.ts';
import { type Asked, type OtherCounts, type OwnCounts, otherCounts, ownCounts } from './faced-counts.ts';
import type { FacedFilm } from './faced-film.ts';
import { type GroupShares, groupShares } from './group-shares.ts';
import { forecastPattern } from './pattern.ts';
import { KEPT } from './shift-belief.ts';

/** One question by one split, with all that is known of it. */
export interface FittedQuestion extends Asked {
  readonly own: OwnCounts;
  readonly others: OtherCounts;
  /** The shares to plan with: only what held up in backtests. */
  readonly planned: readonly GroupShares[];
}

/** Both films and what is expected in each situation. */
export interface QuestionFilm {
  readonly own: FacedFilm;
  readonly others: FacedFilm | null;
  readonly forecasts: readonly Forecast[];
}

/** Fits a question; null where none of their snaps was charted. */
export function fitQuestion({ own, others, forecasts }: QuestionFilm, asked: Asked): FittedQuestion | null {
  const pattern = forecastPattern(forecasts, asked.definition);
  const counted = ownCounts(own, asked, pattern);
  if (counted.due.came.every((count) => count === 0)) return null;
  const other = otherCounts(others, asked);
  const film = { due: counted.due, shift: other.shift, say: saysOf(counted, asked.definition.target) };
  return {
    ...asked,
    own: counted,
    others: other,
    planned: groupShares(film, KEPT[asked.by][asked.definition.target]),
  };
}

/** Part of a snap each snap of a group counts for: those of one game are alike. */
export function saysOf({ games, due }: OwnCounts, question: string): number[] {
  return Array.from({ length: due.came.length / due.classes }, (_, group) => {
    const place = group * due.classes;
    const trials = games.map(({ counts }) =>
      counts.subarray(place, place + due.classes).reduce((sum, n) => sum + n, 0),
    );
    const snaps = trials.reduce((sum, n) => sum + n, 0);
    return effectiveSnaps(trials, question) / Math.max(1, snaps);
  });
}
