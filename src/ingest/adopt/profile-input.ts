import type * as z from 'zod';
import type { profileSchema } from '../profile.ts';
import type { PairDates } from '../read-pair.ts';
import type { Transform } from '../translate-cell.ts';

/** A profile as it is written into its file. */
export type ProfileInput = z.input<typeof profileSchema>;

/** A condition of a profile as drafted: the cell is one of these. */
export interface DraftCondition {
  readonly header: string;
  readonly is: string[];
}

/** A rule of a profile as drafted. */
export interface DraftRule {
  readonly when: DraftCondition[];
  readonly use: string;
}

/** Where one of our columns comes from, as drafted. */
export interface DraftSource {
  readonly header?: string;
  readonly with?: string;
  readonly value?: string;
  readonly as?: Transform;
  readonly dates?: PairDates;
  readonly words?: Readonly<Record<string, string>>;
  readonly sides?: Readonly<Record<string, 'own' | 'opp'>>;
  readonly rules?: readonly DraftRule[];
  readonly restarts?: { readonly header: string; readonly names: readonly string[] };
}
