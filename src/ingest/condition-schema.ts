import * as z from 'zod';

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
