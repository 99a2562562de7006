import { basename, join, resolve } from 'node:path';
import { LEAST_GRADED } from '../pressure/review/grade.ts';
import { type Review, reviewWeek } from '../pressure/review/review.ts';
import { type Season, seasonOf } from '../pressure/review/season.ts';
import { reviewSentences } from '../report/review/review-words.ts';
import { seasonSentences } from '../report/review/season-words.ts';
import { earlierReviews } from './earlier-reviews.ts';
import { CommandProblem, EXIT } from './exit-code.ts';
import { type GameReading, readGame } from './read-game.ts';
import { sealed, sealedText } from './seal.ts';
import { tableText } from './table-text.ts';
import type { Terminal } from './terminal.ts';
import { planSaidOnSunday } from './week-plan-source.ts';
import { writeFiles } from './write-files.ts';

/** Flags of the review command. */
export interface ReviewOptions {
  readonly output?: string;
  readonly json?: boolean;
}

/** Judges Sunday's plan and our calls on the finished game, and puts the season so far together. */
export async function review(weekFolder: string, options: ReviewOptions, terminal: Terminal): Promise<number> {
  const { week, inputs, plan, sunday } = await planSaidOnSunday(weekFolder, terminal);
  const played = await readGame(weekFolder, { opponent: plan.opponent, library: week.library });
  for (const line of played.named) terminal.note(line);
  if (played.game.size === 0)
    throw new CommandProblem('faults', `no usable snap of ${plan.opponent} in the game sheet`);
  const made = reviewWeek({
    plan,
    week: basename(resolve(weekFolder)),
    sunday,
    game: played.game,
    ours: played.ours,
    film: week.chart,
    archive: week.archive,
    earlierFilm: week.ownFilm,
  });
  const before = await earlierReviews(weekFolder);
  for (const problem of before.problems) terminal.note(problem);
  const reviews = [...before.reviews, made];
  const season = seasonOf(reviews, before.notReviewed);
  const { renderReview } = await import('../report/review/render-review.ts');
  const { renderSeason } = await import('../report/review/render-season.ts');
  const written = await writeFiles(options.output ?? join(weekFolder, 'out'), [
    { name: 'review.html', text: await renderReview(made) },
    { name: 'review.json', text: sealedText(sealed(made, inputs)) },
    { name: 'season.html', text: await renderSeason(season, reviews) },
  ]);
  const result = { review: made, season };
  terminal.out(options.json ? `${JSON.stringify(result, null, 2)}\n` : resultText(made, season));
  for (const path of written) terminal.note(`Wrote ${path}`);
  return exitCode(played);
}

function exitCode({ faults }: GameReading): number {
  return faults > 0 ? EXIT.faults : EXIT.fine;
}

/** Calls named on the terminal; the page has all of them. */
const CALLS_NAMED = 12;

function resultText(made: Review, season: Season): string {
  const head = `${made.opponent}, ${made.week}:`;
  const lines = [head, ...reviewSentences(made).map(bullet), 'Season so far:', ...seasonSentences(season).map(bullet)];
  return `${[...lines, callText(made)].join('\n')}\n`;
}

function callText({ grades }: Review): string {
  const calls = (grades?.calls ?? []).slice(0, CALLS_NAMED);
  const rows = calls.map(({ name, snaps, held, saved, expected, standing }) => [
    name,
    String(snaps),
    `${held.count} of ${held.trials}`,
    snaps < LEAST_GRADED ? '' : saved.toFixed(1),
    snaps < LEAST_GRADED ? '' : expected.toFixed(1),
    standing,
  ]);
  return rows.length === 0 ? '' : tableText(['call', 'snaps', 'held', 'saved per ten', 'expected', 'so'], rows);
}

function bullet(line: string): string {
  return `  ${line}`;
}
