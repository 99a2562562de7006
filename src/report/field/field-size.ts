import type { Level } from '../../game/call-library.ts';

/** Width of the field in yards, 160 ft at every level (NFHS, NCAA and NFL rule books). */
export const FIELD_WIDTH = 160 / 3;

/**
 * Yards from a hash mark to the nearer sideline.
 *
 * @see NFHS Rule 1: field in thirds, 53 ft 4 in; NCAA Rule 2-12-7: 60 ft; NFL operations glossary: 70 ft 9 in
 */
export const HASH_TO_SIDELINE: Readonly<Record<Level, number>> = {
  high_school: 160 / 9,
  college: 20,
  pro: 70.75 / 3,
};

/** A place on the drawn field: yards from the left sideline, yards past the line of scrimmage (behind it below zero). */
export interface FieldPoint {
  readonly across: number;
  readonly past: number;
}

/** A point kept inside the sidelines by a yard and a half. */
export function insideField({ across, past }: FieldPoint): FieldPoint {
  return { across: Math.min(FIELD_WIDTH - 1.5, Math.max(1.5, across)), past };
}
