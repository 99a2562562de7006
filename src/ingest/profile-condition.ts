import * as z from 'zod';
import { plainWord } from './read-cell.ts';

/** One text, or a list of them; always a list after reading. */
const texts = z.preprocess((value) => (typeof value === 'string' ? [value] : value), z.array(z.string()).min(1));

/** A number, written as text because a profile keeps every value as it stands. */
const figure = z
  .string()
  .regex(/^[+-]?\d+(?:\.\d+)?$/, 'is not a number')
  .transform(Number);

/** A question about one cell of a row. All tests given must hold. A blank cell answers only `is: ''`. */
export const conditionSchema = z
  .strictObject({
    header: z.string().min(1).describe('a header of the sheet'),
    is: texts.optional().describe('the cell is one of these'),
    is_not: texts.optional().describe('the cell is charted and none of these'),
    at_least: figure.optional().describe('the cell is a number, and not smaller'),
    at_most: figure.optional().describe('the cell is a number, and not larger'),
  })
  .refine(({ is, is_not, at_least, at_most }) => [is, is_not, at_least, at_most].some((test) => test !== undefined), {
    error: 'asks nothing: give is, is_not, at_least or at_most',
  });

/** One condition, or a list of them; always a list after reading. */
export const conditionsSchema = z.preprocess(
  (value) => (value !== undefined && !Array.isArray(value) ? [value] : value),
  z.array(conditionSchema),
);

/** A question about one cell of a row, as read from a profile. */
export type Condition = z.infer<typeof conditionSchema>;

/** Whether a row of the sheet answers a question with yes. */
export type RowTest = (cells: readonly string[]) => boolean;

/** The condition as a test on rows whose cells stand in the order of `headers`. A header the sheet lacks is blank. */
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
