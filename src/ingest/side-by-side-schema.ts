import * as z from 'zod';

/** A sheet that lists several snaps beside one another: where the first one stands, and how many there are. */
export const sideBySideSchema = z.strictObject({
  first: z
    .string()
    .regex(/^[A-Z]{1,3}$/, 'is not the letter of a column')
    .describe('letter of the first column of the first snap'),
  width: figure(2).describe('columns of one snap'),
  snaps: figure(2).describe('snaps in a row'),
});

/** How snaps stand beside one another in a row; other columns belong to all of them. */
export type SideBySide = z.infer<typeof sideBySideSchema>;

/** A count, written as text because a profile keeps every value as it stands. */
function figure(least: number) {
  return z
    .string()
    .regex(/^\d{1,2}$/, 'is not a number of columns')
    .transform(Number)
    .refine((value) => value >= least, { error: `is less than ${least}` });
}
