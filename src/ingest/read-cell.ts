import type { ColumnDefinition } from '../game/columns.ts';
import { BLANK, type CellReading, faultReading, valueReading } from './cell-reading.ts';
import { isGoalToGo } from './goal-to-go.ts';
import { suggest } from './look-alike.ts';
import { nearestWord } from './nearest-word.ts';
import { withPlainMinus } from './plain-minus.ts';
import { readClock } from './read-clock.ts';
import { readFieldPosition } from './read-field-position.ts';
import { readNumber } from './read-number.ts';
import { readPersonnel, readReceivers } from './read-shape.ts';
import { withoutGuard } from './write-csv.ts';
import { flagOf } from './yes-or-no.ts';

/** What people write for "not charted" when they should leave the cell blank; judgment. */
const NOTHING_WORDS = ['-', '--', '?', 'n/a', 'na', '#n/a', 'nan', 'null', 'unknown', 'x'];

/** The distance of goal to go stands in another cell. */
const GOAL_READING: CellReading = {
  kind: 'fault',
  rule: 'is goal to go, and no yard line says how far that is',
  suggestion: 'Chart ball_on, or type the yards to the goal line.',
  goal: true,
};

/** That somebody moved is no kind of motion. */
const BARE_MOTION: CellReading = {
  kind: 'fault',
  rule: 'says that somebody moved, not how',
  suggestion: 'Type shift, short, across, fast or back_out, or leave motion blank on every snap.',
};

/** Characters that cannot be seen and mean nothing in a sheet: controls, zero-width and direction marks. */
const UNSEEN = /[\p{Cc}\p{Cf}]/gu;

/**
 * What one cell of a column says, from the text as written. White space around it and case do not matter; characters
 * that cannot be seen are taken out with a remark; a blank is "not charted". Never throws.
 */
export function readCell(definition: ColumnDefinition, written: string): CellReading {
  const spaced = written.replace(/\s+/g, ' ').trim();
  if (spaced === '') return BLANK;
  const seen = spaced.replace(UNSEEN, '').trim();
  const reading = seen === '' ? BLANK : readSeen(definition, seen);
  if (seen === spaced || reading.kind !== 'value') return reading;
  return { ...reading, remark: 'holds characters that cannot be seen; they were left out' };
}

/** The word as our lists write it: lower case, spaces and hyphens as underscores. */
export function plainWord(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, '_');
}

function readSeen(definition: ColumnDefinition, text: string): CellReading {
  const reading = readForm(definition, text);
  if (reading.kind !== 'fault' || !NOTHING_WORDS.includes(withPlainMinus(text).toLowerCase())) return reading;
  return faultReading(reading.rule, 'Leave the cell blank when it was not charted.');
}

function readForm({ name, cell }: ColumnDefinition, text: string): CellReading {
  if (name === 'to_go' && isGoalToGo(text)) return GOAL_READING;
  switch (cell.form) {
    case 'word':
      return name === 'motion' && flagOf(text) === 'yes' ? BARE_MOTION : readWord(cell.words, text);
    case 'text':
      return valueReading(withoutGuard(text));
    case 'code':
      return cell.shape === 'personnel' ? readPersonnel(text) : readReceivers(text);
    case 'number':
      return readNumber(cell, text);
    case 'clock':
      return readClock(text);
    case 'field':
      return readFieldPosition(text);
    default:
      return cell satisfies never;
  }
}

function readWord(words: readonly string[], text: string): CellReading {
  const word = plainWord(text);
  if (words.includes(word)) return valueReading(word);
  const meant = nearestWord(word, words);
  const suggestion = meant === undefined ? undefined : suggest(text, meant);
  return faultReading(`is not one of ${words.join(', ')}`, suggestion);
}
