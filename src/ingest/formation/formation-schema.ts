import * as z from 'zod';
import { BACK_SPOTS, STRENGTHS } from '../../game/vocabulary.ts';
import { readReceivers } from '../read-shape.ts';

const entry = z
  .strictObject({
    receivers: z
      .string()
      .refine((text) => readReceivers(text).kind === 'value', {
        error: 'is not a count to the strength x away from it, as in 3x1',
      })
      .optional()
      .describe('receivers to the strength x away from it, as in 3x1'),
    backs: z.number().int().min(0).max(3).optional().describe('backs in the backfield'),
    back_spot: z.enum(BACK_SPOTS).optional().describe('where the back stands'),
    strength: z
      .enum(STRENGTHS)
      .optional()
      .describe('its side, if it is always the same; a left or right in the name says it too'),
  })
  .refine(
    ({ backs, back_spot }) =>
      backs === undefined || back_spot === undefined || (backs === 0) === (back_spot === 'none'),
    {
      error:
        'says with backs that somebody stands in the backfield, and with back_spot that nobody does, or the other way round',
    },
  );

/** What the staff's own formation names mean: a name, and the structure it stands for. */
export const formationBookSchema = z.strictObject({
  formations: z.record(z.string().min(1), entry).describe("the staff's own name for a formation: what it looks like"),
});

/** A formation book as read from its file. */
export type FormationBook = z.infer<typeof formationBookSchema>;
