import type { LeftOutTallies } from '../pressure/forecast/counts/beside-film.ts';
import type { CountProblem } from '../pressure/forecast/counts/count-reading.ts';
import { COUNT_COLUMNS, type CountColumn } from '../pressure/forecast/counts/count-row.ts';

/** The rule a value of a file of tallies breaks; completes the sentence "<found> ...". */
export function tallyRule({ column, fault, words }: CountProblem): string {
  const oneOf = `it is one of ${words.join(', ')}`;
  switch (fault.kind) {
    case 'no_column':
      return `has no column "${column}"; a file of tallies has ${COUNT_COLUMNS.join(', ')}`;
    case 'blank':
      return 'is blank; every tally names its offense';
    case 'unknown':
      return `is no ${COLUMN_WORDS[column] ?? column}; ${oneOf}`;
    case 'unknown_class':
      return `is no class of ${fault.target}; ${oneOf}`;
    case 'no_count':
      return 'is not a whole number of at least 0';
    default:
      return fault satisfies never;
  }
}

const COLUMN_WORDS: Readonly<Partial<Record<CountColumn, string>>> = { state: 'state of a game' };

/** Tallies that do not count, and why. */
export function leftOutTallyWords({ offense, snaps, why }: LeftOutTallies): string {
  const because = why === 'opponent' ? "this week's opponent is forecast from its film" : 'its film is here and counts';
  return `the tallies of ${offense} (${snaps} snaps) are left out: ${because}, and no snap may count twice`;
}
