import { placeOf } from './cell-place.ts';
import { BLANK, type CellReading } from './cell-reading.ts';
import { type CodeStore, codeOfWord, createStore, detached, type NumberStore } from './column-store.ts';
import type { RowProblem } from './row-problem.ts';
import type { PlannedColumn } from './sheet-plan.ts';

/** Stands in a lane's cache for a text that needs a closer look: a fault, or a value with a remark. */
export const ODD = Number.NEGATIVE_INFINITY;

/** Different texts a lane remembers; beyond it every cell is read again. Judgment. */
const MOST_REMEMBERED = 0x10000;

/** A planned column with the store it fills and what it has learned: each different text is read only once. */
export interface CellLane<Store> {
  readonly column: PlannedColumn;
  readonly store: Store;
  /** The code or number of a text, or {@link ODD}; undefined before it was learned. */
  readonly cache: Map<string, number>;
  /** What was seen in the texts that are {@link ODD}. */
  readonly odd: Map<string, OddText>;
}

/** A lane that fills a column of words. */
export type CodeLane = CellLane<CodeStore>;

/** A lane that fills a column of numbers. */
export type NumberLane = CellLane<NumberStore>;

/** The lanes of the planned columns, words and numbers apart so that each loop over them meets one kind of store. */
export function createLanes(
  columns: readonly PlannedColumn[],
  capacity: number,
): { readonly codeLanes: readonly CodeLane[]; readonly numberLanes: readonly NumberLane[] } {
  const codeLanes: CodeLane[] = [];
  const numberLanes: NumberLane[] = [];
  for (const column of columns) {
    const store = createStore(column, capacity);
    if (store.kind === 'code') codeLanes.push({ column, store, cache: new Map(), odd: new Map() });
    else numberLanes.push({ column, store, cache: new Map(), odd: new Map() });
  }
  return { codeLanes, numberLanes };
}

/** Reads a text the lane has not met, and remembers what it says. */
export function learn(lane: CodeLane | NumberLane, written: string): number {
  const value = storedForm(lane, lane.column.read(written));
  if (lane.cache.size < MOST_REMEMBERED) lane.cache.set(detached(written), value);
  return value;
}

/** A text that is {@link ODD}, looked at closely. */
interface OddText {
  /** What is wrong with it and where it stands, but for the row; undefined when nothing is. */
  readonly finding: Omit<RowProblem, 'file' | 'row'> | undefined;
  /** Whether it is a distance of goal to go. */
  readonly isGoal: boolean;
  /** What to store when it is not a fault. */
  readonly value: number;
}

/** What the lane's cell in the row says, which is {@link ODD}; worked out once for each different text. */
export function lookCloser(lane: CodeLane | NumberLane, cells: readonly string[]): OddText {
  const written = lane.column.textOf(cells);
  const seen = lane.odd.get(written);
  if (seen !== undefined) return seen;
  const reading = lane.column.read(written);
  const plain = reading.kind === 'value' ? { kind: 'value' as const, value: reading.value } : BLANK;
  const flaw = flawOf(reading);
  const odd: OddText = {
    finding: flaw && { ...placeOf(lane.column, cells), ...flaw },
    isGoal: reading.kind === 'fault' && reading.goal === true,
    value: storedForm(lane, plain),
  };
  if (lane.odd.size < MOST_REMEMBERED) lane.odd.set(detached(written), odd);
  return odd;
}

type Flaw = Pick<RowProblem, 'severity' | 'rule' | 'suggestion'>;

function flawOf(reading: CellReading): Flaw | undefined {
  if (reading.kind === 'fault') return flaw('fault', reading.rule, reading.suggestion);
  if (reading.remark === undefined) return undefined;
  return flaw('warning', reading.remark, reading.kind === 'blank' ? reading.suggestion : undefined);
}

function flaw(severity: Flaw['severity'], rule: string, suggestion: string | undefined): Flaw {
  return { severity, rule, ...(suggestion === undefined ? {} : { suggestion }) };
}

function storedForm({ store }: CodeLane | NumberLane, reading: CellReading): number {
  if (reading.kind === 'fault') return ODD;
  if (reading.remark !== undefined) return ODD;
  if (reading.kind === 'blank') return store.kind === 'code' ? 0 : Number.NaN;
  return store.kind === 'code' ? codeOfWord(store, String(reading.value)) : Number(reading.value);
}
