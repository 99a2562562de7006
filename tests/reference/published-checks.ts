import type { Check } from './check.ts';
import { DECISION_CHECKS } from './published/decisions.ts';
import { PROPORTION_CHECKS } from './published/proportions.ts';
import { SEQUENCE_CHECKS } from './published/sequences.ts';
import { TABLE_CHECKS } from './published/tables.ts';

/**
 * Figures from papers, textbooks and manuals, some from memory. Where the source prints few digits, the others come
 * from the program it names; "from memory" marks a printed figure that was not looked up again.
 */
export const PUBLISHED_CHECKS: readonly Check[] = [
  ...PROPORTION_CHECKS,
  ...TABLE_CHECKS,
  ...SEQUENCE_CHECKS,
  ...DECISION_CHECKS,
];
