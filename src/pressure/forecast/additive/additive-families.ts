import type { AdditiveColumn } from './additive-columns.ts';

/** Columns that act together: each combination of their levels that occurs has a coefficient of its own. */
export interface AdditiveFamily {
  readonly columns: readonly AdditiveColumn[];
  /** How strongly its coefficients are pulled to 0, beside the other families. */
  readonly pull: number;
}

/** Before the look is known, or with it. */
export type AdditiveReading = 'plan' | 'line';

/**
 * What any offense does in a place: fitted on the archive.
 *
 * @param reading - `plan` leaves out everything of the look
 */
export function archiveFamilies(reading: AdditiveReading): readonly AdditiveFamily[] {
  return knownTo(reading, ARCHIVE_FAMILIES);
}

/**
 * What this offense does differently: fitted on its own few games, coarser than the archive's.
 *
 * @param reading - `plan` leaves out everything of the look
 */
export function opponentFamilies(reading: AdditiveReading): readonly AdditiveFamily[] {
  return knownTo(reading, OPPONENT_FAMILIES);
}

/** Columns that are seen only at the line of scrimmage. */
const LOOK_COLUMNS: readonly AdditiveColumn[] = ['look', 'formation', 'receivers', 'back_spot'];

function knownTo(reading: AdditiveReading, families: readonly AdditiveFamily[]): readonly AdditiveFamily[] {
  if (reading === 'line') return families;
  return families.filter(({ columns }) => !columns.some((column) => LOOK_COLUMNS.includes(column)));
}

/**
 * The finer a family, the stronger its pull; the ratios are judgement. Receivers and back spot are in no open data:
 * their families are judgement altogether.
 */
const ARCHIVE_FAMILIES: readonly AdditiveFamily[] = [
  family(0.01),
  family(2, 'distance'),
  family(4, 'situation'),
  family(4, 'yards', 'down'),
  family(2, 'state'),
  family(4, 'quarter'),
  family(4, 'clock'),
  family(4, 'margin'),
  family(4, 'field'),
  family(4, 'hash'),
  family(2, 'tempo'),
  family(2, 'personnel'),
  family(8, 'rough_clock', 'rough_margin'),
  family(8, 'rough_clock', 'rough_margin', 'rough_distance'),
  family(8, 'situation', 'state'),
  family(8, 'rough_field', 'down'),
  family(8, 'tempo', 'rough_clock'),
  family(8, 'personnel', 'rough_distance'),
  family(2, 'look'),
  family(2, 'formation'),
  family(4, 'look', 'distance'),
  family(4, 'look', 'state'),
  family(4, 'look', 'tempo'),
  family(8, 'formation', 'rough_distance'),
  family(8, 'formation', 'personnel'),
  family(8, 'look', 'rough_clock'),
  family(8, 'look', 'rough_margin'),
  family(8, 'look', 'rough_field'),
  family(16, 'look', 'situation', 'state'),
  family(2, 'receivers'),
  family(8, 'receivers', 'look'),
  family(8, 'receivers', 'situation'),
  family(2, 'back_spot'),
  family(8, 'back_spot', 'look'),
  family(8, 'back_spot', 'rough_distance'),
];

const OPPONENT_FAMILIES: readonly AdditiveFamily[] = [
  family(1),
  family(1, 'situation'),
  family(1, 'rough_distance'),
  family(1, 'state'),
  family(1, 'tempo'),
  family(1, 'personnel'),
  family(1, 'backs'),
  family(1, 'hash'),
  family(1, 'rough_field'),
  family(1, 'rough_margin'),
  family(1, 'rough_clock'),
  family(1, 'look'),
  family(1, 'formation'),
  family(1, 'look', 'rough_distance'),
  family(1, 'look', 'personnel'),
  family(1, 'formation', 'rough_distance'),
  family(1, 'receivers'),
  family(1, 'receivers', 'rough_distance'),
  family(1, 'back_spot'),
];

function family(pull: number, ...columns: readonly AdditiveColumn[]): AdditiveFamily {
  return { columns, pull };
}
