import { yamlTemplate } from '../yaml-template.ts';
import { formationBookSchema } from './formation-schema.ts';

/** A formations.yaml with invented names that shows what a formation book may say. */
export function formationTemplate(): string {
  const example = {
    formations: {
      Bench: { receivers: '2x1', backs: 1, back_spot: 'behind' },
      Ladder: { receivers: '3x1', backs: 1 },
      'Ladder left': { receivers: '3x1', backs: 1, back_spot: 'weak', strength: 'left' },
      Kettle: { receivers: '3x2', backs: 0 },
    },
  };
  return yamlTemplate(formationBookSchema, example, [
    "What the staff's formation names look like; the names here are invented. Copy it into the season folder, or beside",
    'the sheets of one week. Receivers, strength and back_spot are filled from it where they were not charted; a charted',
    'cell always counts. "pressure-plan check" lists the names it does not have, and what was charted with them.',
  ]);
}
