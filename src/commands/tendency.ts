import { type TendencyAnswer, type TendencyRow, tendencyOf } from '../pressure/snap/tendency.ts';
import { readWeek } from '../season/read-week.ts';
import { readSeasonFolder } from '../season/season-folder.ts';
import { UserProblem } from '../season/user-problem.ts';
import { diskWeek } from './disk-season.ts';
import { EXIT } from './exit-code.ts';
import { tableText } from './table-text.ts';
import type { Terminal } from './terminal.ts';

/** Flags of the tendency command. */
export interface TendencyOptions {
  readonly of: string;
  readonly when?: readonly string[];
  readonly by: string;
  readonly json?: boolean;
}

/** Few snaps: under 20 a share is called thin. Common practice, no source. */
const THIN = 20;

/** Answers one question about the opponent's film as a table. */
export async function tendency(weekFolder: string, options: TendencyOptions, terminal: Terminal): Promise<number> {
  const week = await readWeek(await readSeasonFolder(diskWeek(weekFolder)));
  const question = { of: options.of, when: options.when ?? [], by: options.by };
  const answer = tendencyOf(week.chart, question, week.settings.situations);
  if (answer.kind === 'problems') {
    throw new UserProblem('usage', answer.problems.map(({ text, rule }) => `"${text}" ${rule}`).join('\n'));
  }
  if (options.json) terminal.out(`${JSON.stringify({ question, ...answer }, null, 2)}\n`);
  else terminal.out(tendencyText(question, answer));
  return EXIT.fine;
}

function tendencyText(question: TendencyOptions, answer: Extract<TendencyAnswer, { kind: 'rows' }>): string {
  const when = question.when?.length ? ` when ${question.when.join(' and ')}` : '';
  const cells = [...answer.rows, answer.total].map(rowCells);
  const table = tableText([question.by, 'count', 'share', '95% interval', 'not charted', ''], cells);
  const notes = answer.leftOut.map(
    ({ asked, word, snaps, ask }) => `"${asked}" leaves out ${snaps} snaps of ${word}; ${ask} counts both.\n`,
  );
  return `How often ${question.of}${when}, by ${question.by}\n${table}${notes.join('')}`;
}

function rowCells({ value, share, notCharted }: TendencyRow): string[] {
  const percent = (part: number) => `${Math.round(100 * part)}%`;
  if (share.estimate === null) return [value, 'no snaps', '', '', String(notCharted), ''];
  return [
    value,
    `${share.count} of ${share.trials}`,
    percent(share.estimate),
    `${percent(share.low)} to ${percent(share.high)}`,
    String(notCharted),
    share.trials < THIN ? 'thin' : '',
  ];
}
