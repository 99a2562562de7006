import * as z from 'zod';

/** A file of answers: under the key of each question its answer, as it would be typed. */
export const answersSchema = z.record(z.string(), z.string()).meta({ scalars: 'text' });
