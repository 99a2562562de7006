import type { ColumnName } from '../../game/columns.ts';
import { flagOf } from '../yes-or-no.ts';
import type { ColumnFacts } from './column-facts.ts';
import { phraseLikeness } from './trade-words.ts';

/**
 * What a yes or no under a trade word says in one of our columns; without `yes` the sheet's yes says less than our words
 * do, and a no means little until the coach says more.
 */
export interface FlagMeaning {
  readonly column: ColumnName;
  readonly phrase: string;
  readonly yes?: string;
  readonly no: string;
}

const FLAG_MEANINGS: readonly FlagMeaning[] = [
  { column: 'tempo', phrase: 'no huddle', yes: 'no_huddle', no: 'huddle' },
  { column: 'tempo', phrase: 'huddle', yes: 'huddle', no: 'no_huddle' },
  // A sheet that says only that somebody moved does not say how.
  { column: 'motion', phrase: 'motion', no: 'none' },
  { column: 'motion', phrase: 'shift', yes: 'shift', no: 'none' },
  { column: 'option_tag', phrase: 'rpo', yes: 'run_pass', no: 'none' },
  { column: 'option_tag', phrase: 'read option', yes: 'read', no: 'none' },
  { column: 'checked', phrase: 'checked', yes: 'yes', no: 'no' },
  { column: 'checked', phrase: 'audible', yes: 'yes', no: 'no' },
  { column: 'shown_early', phrase: 'shown early', yes: 'yes', no: 'no' },
];

/** Whether a column holds yes and no, in any of the usual ways, and nothing else. */
export function isFlag({ counts }: ColumnFacts): boolean {
  return counts.size >= 1 && counts.size <= 2 && [...counts.keys()].every((text) => flagOf(text) !== undefined);
}

/** The meaning of a yes-or-no column for one of our columns, by its header; undefined when the header does not say. */
export function flagMeaning(facts: ColumnFacts, column: ColumnName): FlagMeaning | undefined {
  if (!isFlag(facts)) return undefined;
  const scored = FLAG_MEANINGS.filter((one) => one.column === column)
    .map((meaning) => ({ meaning, likeness: phraseLikeness(facts.header, meaning.phrase) }))
    .filter(({ likeness }) => likeness >= 0.75);
  return scored.sort((left, right) => right.likeness - left.likeness)[0]?.meaning;
}
