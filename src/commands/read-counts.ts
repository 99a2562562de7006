import Papa from 'papaparse';
import { columnLetter } from '../ingest/column-letter.ts';
import { decodeText } from '../ingest/decode-text.ts';
import { nearestWord } from '../ingest/nearest-word.ts';
import { describeProblem, type RowProblem } from '../ingest/row-problem.ts';
import { withoutGuard } from '../ingest/write-csv.ts';
import { type CountProblem, readCounts } from '../pressure/forecast/counts/count-reading.ts';
import type { CountRow } from '../pressure/forecast/counts/count-row.ts';
import { CommandProblem } from './exit-code.ts';
import type { FoundFile } from './season-folder.ts';

/** Faults of tallies that are listed before the rest is only counted. */
const LISTED = 20;

/**
 * The tallies of other offenses in the files given; those of the opponent itself are left out, its film counts already.
 *
 * @throws CommandProblem when a file has a fault; tallies with holes in them would be wrong numbers
 */
export function readCountFiles(files: readonly FoundFile[], opponent: string): CountRow[] {
  const plain = (name: string) => name.trim().toLowerCase();
  return files.flatMap(readCountFile).filter(({ offense }) => plain(offense) !== plain(opponent));
}

function readCountFile({ file, bytes }: FoundFile): readonly CountRow[] {
  const decoded = decodeText(bytes);
  if (decoded.kind === 'refused') throw new CommandProblem('faults', `${file}: ${decoded.reason}`);
  const { data } = Papa.parse<string[]>(decoded.text);
  const reading = readCounts(data.map((row) => row.map(withoutGuard)));
  if (reading.kind === 'counts') return reading.rows;
  const problems = reading.problems.map((problem) => describeProblem(rowProblem(problem, file)));
  const rest = problems.length > LISTED ? [`… and ${problems.length - LISTED} more in ${file}`] : [];
  throw new CommandProblem('faults', [...problems.slice(0, LISTED), ...rest].join('\n'));
}

function rowProblem({ row, column, header, found, rule, words }: CountProblem, file: string): RowProblem {
  const meant = nearestWord(column === null ? header : found, words);
  return {
    severity: 'fault',
    file,
    row,
    ...(column === null ? {} : { columnLetter: columnLetter(column), header }),
    found,
    rule,
    ...(meant === undefined ? {} : { suggestion: `Did you mean "${meant}"?` }),
  };
}
