import type { JoinableColumn } from '../join-cells.ts';
import { joinCells } from '../join-cells.ts';
import { type ColumnFacts, factsOf, isInside, shareWhere } from './column-facts.ts';
import { stepShare } from './game-runs.ts';

/** Words for a side of the field, or for the teams, are so many at most; judgment. */
const MOST_SIDES = 8;

/** Pairs of columns looked at for each of our columns; judgment. */
const MOST_PAIRS = 40;

/**
 * Every two columns of a sheet that may belong together, as one each: a yard line and its side, minutes and seconds, two
 * scores. The detectors judge whether they do.
 */
export function joinedColumns(columns: readonly ColumnFacts[]): ColumnFacts[] {
  const whole = columns.filter(({ part, filled }) => part === undefined && filled > 0);
  return [
    ...pairsOf('ball_on', whole.filter(isLine), whole.filter(isSide)),
    ...pairsOf('clock', whole.filter(isMinutes), whole.filter(isSeconds)),
    ...pairsOf('score_margin', whole.filter(isScore), whole.filter(isScore)),
  ];
}

/** Two of his columns as one of our columns. */
export function joinTwo(column: JoinableColumn, first: ColumnFacts, second: ColumnFacts): ColumnFacts {
  const cells = first.cells.map((cell, i) => joinCells(column, cell, second.cells[i] ?? ''));
  const { index, header } = first;
  return factsOf({ index, header, part: undefined, joined: { column, index: second.index }, cells });
}

function pairsOf(
  column: JoinableColumn,
  firsts: readonly ColumnFacts[],
  seconds: readonly ColumnFacts[],
): ColumnFacts[] {
  const pairs = firsts.flatMap((first) =>
    seconds.filter((second) => second !== first).map((second) => [first, second]),
  );
  return pairs
    .slice(0, MOST_PAIRS)
    .flatMap(([first, second]) => (first && second ? [joinTwo(column, first, second)] : []));
}

/** A few words or signs, on at least half of the rows. */
function isSide(facts: ColumnFacts): boolean {
  const { counts, filled, cells } = facts;
  if (counts.size > MOST_SIDES || filled < 0.3 * cells.length) return false;
  return shareWhere(facts, (text) => /^(?:[+-]|\p{L}[\p{L} .'&]*)$/u.test(text)) >= 0.97;
}

function isLine(facts: ColumnFacts): boolean {
  return facts.wholeShare >= 0.95 && isInside(facts, 1, 50) && facts.counts.size >= 8;
}

function isMinutes(facts: ColumnFacts): boolean {
  return facts.wholeShare >= 0.97 && isInside(facts, 0, 15) && facts.counts.size >= 4;
}

function isSeconds(facts: ColumnFacts): boolean {
  return facts.wholeShare >= 0.97 && isInside(facts, 0, 59) && !isInside(facts, 0, 15) && facts.counts.size >= 5;
}

/** Begins with 0, stays level on most rows, falls only where a game begins, and rises by no more than eight. */
function isScore({ wholeShare, numbers, counts, ...facts }: ColumnFacts): boolean {
  if (wholeShare < 0.97 || !isInside({ wholeShare, numbers, counts, ...facts }, 0, 99)) return false;
  if (!counts.has('0') || counts.size < 2) return false;
  const starts = new Set([...numbers.keys()].filter((i) => numbers[i] === 0));
  const level = stepShare(numbers, starts, (before, after) => before === after);
  return level >= 0.7 && stepShare(numbers, starts, (before, after) => after >= before && after <= before + 8) >= 0.98;
}
