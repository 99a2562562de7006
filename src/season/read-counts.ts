import Papa from 'papaparse';
import { columnLetter } from '../ingest/column-letter.ts';
import { decodeText } from '../ingest/decode-text.ts';
import { nearestWord } from '../ingest/nearest-word.ts';
import { describeProblem, type RowProblem } from '../ingest/row-problem.ts';
import { withoutGuard } from '../ingest/write-csv.ts';
import { type CountsBesideFilm, countsBesideFilm, type Filmed } from '../pressure/forecast/counts/beside-film.ts';
import { type CountProblem, readCounts } from '../pressure/forecast/counts/count-reading.ts';
import type { CountRow } from '../pressure/forecast/counts/count-row.ts';
import type { FoundFile } from './season-folder.ts';
import { tallyRule } from './tally-words.ts';
import { UserProblem } from './user-problem.ts';

/** Faults of tallies that are listed before the rest is only counted. */
const LISTED = 20;

/**
 * The tallies in the files given, without those of offenses with film here.
 *
 * @param filmed - says which offenses are on film here; asked only when there are tallies
 * @throws UserProblem when a file has a fault; tallies with holes in them would be wrong numbers
 */
export function readCountFiles(files: readonly FoundFile[], filmed: () => Filmed): CountsBesideFilm {
  if (files.length === 0) return { rows: [], leftOut: [] };
  return countsBesideFilm(files.flatMap(readCountFile), filmed());
}

/**
 * The tallies of one file.
 *
 * @throws UserProblem when it has a fault
 */
export function readCountFile({ file, bytes }: FoundFile): readonly CountRow[] {
  const decoded = decodeText(bytes);
  if (decoded.kind === 'refused') throw new UserProblem('faults', `${file}: ${decoded.reason}`);
  const { data } = Papa.parse<string[]>(decoded.text);
  const reading = readCounts(data.map((row) => row.map(withoutGuard)));
  if (reading.kind === 'counts') return reading.rows;
  const problems = reading.problems.map((problem) => describeProblem(rowProblem(problem, file)));
  const rest = problems.length > LISTED ? [`… and ${problems.length - LISTED} more in ${file}`] : [];
  throw new UserProblem('faults', [...problems.slice(0, LISTED), ...rest].join('\n'));
}

function rowProblem(problem: CountProblem, file: string): RowProblem {
  const { row, place, column, found, words } = problem;
  const meant = nearestWord(place === null ? column : found, words);
  return {
    severity: 'fault',
    file,
    row,
    ...(place === null ? {} : { columnLetter: columnLetter(place), header: column }),
    found,
    rule: tallyRule(problem),
    ...(meant === undefined ? {} : { suggestion: `Did you mean "${meant}"?` }),
  };
}
