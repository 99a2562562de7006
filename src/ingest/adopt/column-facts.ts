import { countBy } from '../../game/by-word.ts';
import { GOAL_TO_GO, isGoalToGo } from '../goal-to-go.ts';
import type { JoinableColumn } from '../join-cells.ts';
import { readFigure } from '../read-figure.ts';
import { isDate, type PairDates, readPair } from '../read-pair.ts';
import type { FoundTable } from './found-table.ts';
import { type PairOrder, pairOrder } from './pair-order.ts';
import type { Answers } from './question.ts';

/** Which of two numbers in one cell a column stands for. */
export type PairPart = 'first_of_pair' | 'second_of_pair';

/** Two of his columns taken as one of our columns: which one, and the place of the second. */
export interface JoinedWith {
  readonly column: JoinableColumn;
  readonly index: number;
}

/**
 * One column of a foreign sheet as its values show it. A cell that holds two numbers gives two such columns, one for
 * each `part`; two columns that may belong together give one more that is `joined`. `counts` has every text and how often it stands there; `numbers` is NaN where a cell is no number.
 * Shares are of the filled cells.
 */
export interface ColumnFacts {
  readonly index: number;
  readonly header: string;
  readonly part: PairPart | undefined;
  /** For a part: how dates stand for the pair. */
  readonly dates?: PairDates;
  readonly joined?: JoinedWith;
  readonly cells: readonly string[];
  readonly filled: number;
  readonly counts: ReadonlyMap<string, number>;
  readonly numbers: Float64Array;
  readonly numberShare: number;
  readonly wholeShare: number;
  readonly dateShare: number;
}

/** Rows looked at to tell the columns apart; judgment: enough to be sure, quick on any sheet. */
const ROWS = 3000;

/** Of the filled cells, this many hold a pair before a column is taken for one; judgment. */
const MOSTLY = 0.9;

/** The facts of every column of a table, pairs as two. */
export function columnFacts(table: FoundTable, answers: Answers): ColumnFacts[] {
  const rows = table.rows.slice(0, ROWS);
  return table.headers.flatMap((header, index) => {
    const cells = withoutGoals(rows.map((row) => row.cells[index] ?? ''));
    const plain = factsOf({ index, header, part: undefined, cells });
    return plain.filled > 0 && isPair(plain) ? [plain, ...pairParts(plain, pairOrder(plain, answers))] : [plain];
  });
}

/**
 * The cells of a distance with those of goal to go left blank: they are read from the ball position. A column of other words
 * may mean anything by a G.
 */
function withoutGoals(cells: readonly string[]): readonly string[] {
  if (!cells.some(isGoalToGo)) return cells;
  const others = cells.filter((cell) => cell !== '' && !isGoalToGo(cell));
  const numbers = others.filter((cell) => !Number.isNaN(readFigure(cell))).length;
  return numbers > 0 && numbers >= MOSTLY * others.length ? cells.map((cell) => (isGoalToGo(cell) ? '' : cell)) : cells;
}

function numberOf(text: string | undefined): string {
  return text === undefined || text === GOAL_TO_GO ? '' : text;
}

/** The share of the filled cells that pass a test. */
export function shareWhere({ counts, filled }: ColumnFacts, test: (text: string) => boolean): number {
  if (filled === 0) return 0;
  let passing = 0;
  for (const [text, count] of counts) if (test(text)) passing += count;
  return passing / filled;
}

/** Whether nearly all filled cells are numbers within bounds. */
export function isInside({ numbers, filled }: ColumnFacts, least: number, most: number): boolean {
  let inside = 0;
  for (const value of numbers) if (value >= least && value <= most) inside++;
  return filled > 0 && inside >= 0.97 * filled;
}

/** What a column is made of, before its values are looked at. */
type FactsBase = Pick<ColumnFacts, 'index' | 'header' | 'part' | 'dates' | 'joined' | 'cells'>;

/** The facts of a column with these cells. */
export function factsOf(base: FactsBase): ColumnFacts {
  const counts = countBy(base.cells, (cell) => cell || undefined);
  const known = new Map([...counts.keys()].map((text) => [text, readFigure(text)]));
  const numbers = Float64Array.from(base.cells, (cell) => known.get(cell) ?? Number.NaN);
  const filled = base.cells.length - base.cells.filter((cell) => cell === '').length;
  const facts = { ...base, counts, filled, numbers, numberShare: 0, wholeShare: 0, dateShare: 0 };
  return {
    ...facts,
    numberShare: shareWhere(facts, (text) => !Number.isNaN(known.get(text))),
    wholeShare: shareWhere(facts, (text) => Number.isInteger(known.get(text))),
    dateShare: shareWhere(facts, isDate),
  };
}

function isPair(facts: ColumnFacts): boolean {
  return shareWhere(facts, (text) => readPair(text) !== undefined) >= MOSTLY;
}

function pairParts({ index, header, cells }: ColumnFacts, { dates }: PairOrder): ColumnFacts[] {
  return (['first_of_pair', 'second_of_pair'] as const).map((part) => {
    const side = part === 'first_of_pair' ? 'first' : 'second';
    return factsOf({ index, header, part, dates, cells: cells.map((cell) => numberOf(readPair(cell, dates)?.[side])) });
  });
}
