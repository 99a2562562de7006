import type { SheetKind } from '../sheet-kind.ts';
import type { ColumnChoices } from './choose-columns.ts';
import type { ColumnFacts } from './column-facts.ts';
import type { SheetContext } from './evidence.ts';
import type { FoundTable } from './found-table.ts';
import type { Answers } from './question.ts';

/** A sheet to draft a profile for. */
export interface DraftRequest {
  readonly table: FoundTable;
  readonly kind: SheetKind;
  /** A name for the game when no column names one. */
  readonly gameName: string;
  readonly answers: Answers;
}

/** A sheet under draft: its columns, what is known of it as a whole, and what was chosen. */
export interface DraftState {
  readonly request: DraftRequest;
  readonly context: SheetContext;
  readonly choices: ColumnChoices;
  /** How a column of his is named in the profile: its header, or its letter. */
  readonly nameOf: (facts: ColumnFacts) => string;
  /** Every code of a column in the whole sheet, and how often it stands there. */
  readonly countsOf: (facts: ColumnFacts) => ReadonlyMap<string, number>;
}
