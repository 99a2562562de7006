import type { ColumnName } from '../../game/columns.ts';
import type { PairDates } from '../read-pair.ts';
import type { SheetKind } from '../sheet-kind.ts';
import type { Transform } from '../translate-cell.ts';
import type { ColumnFacts } from './column-facts.ts';
import type { Chain } from './snap-chain.ts';

/**
 * What the values of a column say for its being one of our columns: `score` 0 (cannot be) to 1 (can be nothing else), why in
 * plain words, and how its cells are to be read. `open` says that a choice about the reading is a guess.
 */
export interface Evidence {
  readonly score: number;
  readonly why: string;
  readonly as?: Transform;
  readonly dates?: PairDates;
  readonly sides?: Readonly<Record<string, 'own' | 'opp'>>;
  readonly open?: string;
}

/** What is known of a sheet as a whole while its columns are looked at one by one. */
export interface SheetContext {
  readonly kind: SheetKind;
  readonly columns: readonly ColumnFacts[];
  /** Every two columns that may belong together, as one each. */
  readonly joined: readonly ColumnFacts[];
  readonly chain: Chain | undefined;
  readonly quarter: ColumnFacts | undefined;
  /** Rows on which a game begins, as far as the quarters tell. */
  readonly gameStarts: ReadonlySet<number>;
  /** For each row 1 for a pass, 0 for a run, 2 where it is not known; undefined when no column says both. */
  readonly passes: Uint8Array | undefined;
}

/** What the values of one column say for its being a given one of our columns; undefined when it cannot be. */
export type Detector = (facts: ColumnFacts, context: SheetContext) => Evidence | undefined;

/** Detectors by which of our columns they look for. */
export type Detectors = Readonly<Partial<Record<ColumnName, Detector>>>;
