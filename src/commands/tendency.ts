import { nearestWord } from '../ingest/nearest-word.ts';
import { toCsv } from '../ingest/write-csv.ts';
import type { QuestionFault } from '../pressure/snap/condition.ts';
import { type QuestionProblem, type TendencyAnswer, type TendencyRow, tendencyOf } from '../pressure/snap/tendency.ts';
import { percentRange } from '../report/words/percent.ts';
import { questionFaultWords } from '../report/words/question-words.ts';
import { isThin, shareWords } from '../report/words/share-words.ts';
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
  readonly csv?: boolean;
}

/** Answers one question about the opponent's film as a table. */
export async function tendency(weekFolder: string, options: TendencyOptions, terminal: Terminal): Promise<number> {
  const { week } = await readWeek(await readSeasonFolder(diskWeek(weekFolder)));
  const question = { of: options.of, when: options.when ?? [], by: options.by };
  const answer = tendencyOf(week.chart, question, week.settings.situations);
  if (answer.kind === 'problems') {
    throw new UserProblem('usage', answer.problems.map(problemLine).join('\n'));
  }
  if (options.json) terminal.out(`${JSON.stringify({ question, ...answer }, null, 2)}\n`);
  else if (options.csv) terminal.out(tendencyCsv(question, answer));
  else terminal.out(tendencyText(question, answer));
  return EXIT.fine;
}

/** What is wrong with a part of the question, after the word that was most likely meant. */
function problemLine({ text, fault }: QuestionProblem): string {
  const near = 'words' in fault ? nearestWord(wordIn(text, fault), fault.words) : undefined;
  return `${near === undefined ? '' : `Did you mean "${near}"? `}"${text}" ${questionFaultWords(fault)}`;
}

/** The word of the part that is not known. */
function wordIn(text: string, fault: QuestionFault): string {
  if ('asked' in fault) return fault.asked;
  return 'name' in fault ? fault.name : text;
}

function tendencyText(question: TendencyOptions, answer: Extract<TendencyAnswer, { kind: 'rows' }>): string {
  const when = question.when?.length ? ` when ${question.when.join(' and ')}` : '';
  const cells = [...answer.rows, answer.total].map(rowCells);
  const table = tableText([question.by, 'on film', 'long run', 'not charted', ''], cells);
  const notes = answer.leftOut.map(
    ({ asked, word, snaps, ask }) => `"${asked}" leaves out ${snaps} snaps of ${word}; ${ask} counts both.\n`,
  );
  return `How often ${question.of}${when}, by ${question.by}\n${table}${notes.join('')}`;
}

/** The rows as CSV: counts and limits as plain numbers. */
function tendencyCsv(question: TendencyOptions, answer: Extract<TendencyAnswer, { kind: 'rows' }>): string {
  const rows = [...answer.rows, answer.total].map(({ value, share, notCharted }) => [
    value ?? NOT_CHARTED,
    share.count,
    share.trials,
    share.estimate ?? undefined,
    share.estimate === null ? undefined : share.low,
    share.estimate === null ? undefined : share.high,
    notCharted,
  ]);
  return toCsv([[question.by, 'count', 'of', 'share', 'low', 'high', 'not_charted'], ...rows]);
}

/** The name of the rows on which what they are split by was not charted. */
const NOT_CHARTED = 'not charted';

function rowCells({ value: charted, share, notCharted }: TendencyRow): string[] {
  const value = charted ?? NOT_CHARTED;
  if (share.estimate === null) return [value, 'no snaps', '', String(notCharted), ''];
  return [
    value,
    shareWords(share),
    percentRange(share.low, share.high),
    String(notCharted),
    isThin(share) ? 'thin' : '',
  ];
}
