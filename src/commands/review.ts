import { join } from 'node:path';
import { LEAST_GRADED } from '../pressure/review/grade.ts';
import type { Review } from '../pressure/review/review.ts';
import type { Season } from '../pressure/review/season.ts';
import { reviewSentences } from '../report/review/review-words.ts';
import { seasonSentences } from '../report/review/season-words.ts';
import { mondayPages } from '../season/monday-pages.ts';
import { diskWeek } from './disk-season.ts';
import { EXIT } from './exit-code.ts';
import { tableText } from './table-text.ts';
import type { Terminal } from './terminal.ts';
import { writeFiles } from './write-files.ts';

/** Flags of the review command. */
export interface ReviewOptions {
  readonly output?: string;
  readonly json?: boolean;
}

/** Judges Sunday's plan and our calls on the finished game, and puts the season so far together. */
export async function review(weekFolder: string, options: ReviewOptions, terminal: Terminal): Promise<number> {
  const { review: made, season, faults, pages } = await mondayPages(diskWeek(weekFolder), terminal);
  const written = await writeFiles(options.output ?? join(weekFolder, 'out'), pages);
  const result = { review: made, season };
  terminal.out(options.json ? `${JSON.stringify(result, null, 2)}\n` : resultText(made, season));
  for (const path of written) terminal.note(`Wrote ${path}`);
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
