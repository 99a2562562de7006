import type { Condition } from './condition-schema.ts';
import { plainWord } from './read-cell.ts';

/** Whether a row of the sheet answers a question with yes. */
export type RowTest = (cells: readonly string[]) => boolean;

/** The condition as a test on rows with cells in the order of `headers`. A header the sheet lacks is blank. */
export function compileCondition(condition: Condition, indexOf: (header: string) => number): RowTest {
  const index = indexOf(condition.header);
  const tests = testsOf(condition);
  return (cells) => {
    const written = (cells[index] ?? '').trim();
    return tests.every((test) => test(written));
  };
}

function testsOf({ is, is_not, at_least, at_most }: Condition): ((written: string) => boolean)[] {
  const tests: ((written: string) => boolean)[] = [];
  if (is) tests.push(oneOf(is));
  if (is_not) tests.push((written) => written !== '' && !oneOf(is_not)(written));
  if (at_least !== undefined) tests.push((written) => figureOf(written) >= at_least);
  if (at_most !== undefined) tests.push((written) => figureOf(written) <= at_most);
  return tests;
}

function oneOf(words: readonly string[]): (written: string) => boolean {
  const known = new Set(words.map(plainWord));
  return (written) => known.has(plainWord(written));
}

/** NaN for a blank or a word, which is neither at least nor at most anything. */
function figureOf(written: string): number {
  return written === '' ? Number.NaN : Number(written);
}
