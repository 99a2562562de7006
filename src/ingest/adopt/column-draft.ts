import type { ColumnName } from '../../game/columns.ts';
import type { ColumnFacts } from './column-facts.ts';
import type { DraftSource } from './profile-input.ts';
import type { Question } from './question.ts';

/** One of our columns as drafted: its source, why, what is still to be asked, and the columns of his it reads. */
export interface ColumnDraft {
  readonly column: ColumnName;
  readonly header: string;
  readonly source: DraftSource | string;
  readonly confidence: number;
  readonly why: string;
  readonly questions: readonly Question[];
  readonly reads: readonly ColumnFacts[];
  /** Texts of the column that say nothing. */
  readonly nothing: readonly string[];
  /** Codes of rows that are not snaps. */
  readonly noSnaps: readonly string[];
}
