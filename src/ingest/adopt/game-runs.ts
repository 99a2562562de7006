import type { ColumnFacts } from './column-facts.ts';

/** Values that stay for a stretch of rows, never to come back: how many stretches, and where a new one begins. */
export interface Runs {
  readonly count: number;
  readonly starts: ReadonlySet<number>;
}

/** The stretches of equal cells; blanks go with what is above them. */
export function runsOf({ cells }: Pick<ColumnFacts, 'cells'>): Runs {
  const starts = new Set<number>();
  let before = '';
  cells.forEach((cell, i) => {
    if (cell === '' || cell === before) return;
    starts.add(i);
    before = cell;
  });
  return { count: starts.size, starts };
}

/** Whether every value of a column fills one stretch of rows, of at least `least` rows on average. */
export function isInRuns(facts: ColumnFacts, least: number): boolean {
  const { count } = runsOf(facts);
  return count > 0 && count === facts.counts.size && facts.cells.length / count >= least;
}

/** Whole numbers that change as quarters do. Shares are 0 to 1; `falls` is once less than there are games. */
export interface Climb {
  /** Of all steps, those that stay or change as quarters do. */
  readonly share: number;
  /** Of the steps that change, those that rise by one or fall to 1. */
  readonly ofChanges: number;
  readonly falls: number;
}

/** How well whole numbers climb as quarters do: they stay or rise by one, and fall only to 1. */
export function climbs({ numbers }: ColumnFacts): Climb {
  const changes = { good: 0, all: 0, falls: 0, steps: 0 };
  let before = Number.NaN;
  for (const value of numbers) {
    if (Number.isNaN(value)) continue;
    if (!Number.isNaN(before)) countStep(changes, before, value);
    before = value;
  }
  const { good, all, falls, steps } = changes;
  return { share: steps === 0 ? 0 : (steps - all + good) / steps, ofChanges: all === 0 ? 0 : good / all, falls };
}

function countStep(
  changes: { good: number; all: number; falls: number; steps: number },
  before: number,
  value: number,
): void {
  changes.steps++;
  if (value === before) return;
  changes.all++;
  if (value < before) changes.falls++;
  if (value === before + 1 || (value < before && value === 1)) changes.good++;
}

/** The share of steps within a game on which numbers fall or stay; a clock does, within a quarter. */
export function fallingShare(numbers: Float64Array, starts: ReadonlySet<number>): number {
  return stepShare(numbers, starts, (before, after) => after <= before);
}

/** The share of steps within a game on which a test of the number before and after holds. */
export function stepShare(
  numbers: Float64Array,
  starts: ReadonlySet<number>,
  test: (before: number, after: number) => boolean,
): number {
  let steps = 0;
  let held = 0;
  for (let i = 1; i < numbers.length; i++) {
    const before = numbers[i - 1] ?? Number.NaN;
    const after = numbers[i] ?? Number.NaN;
    if (Number.isNaN(before) || Number.isNaN(after) || starts.has(i)) continue;
    steps++;
    if (test(before, after)) held++;
  }
  return steps === 0 ? 0 : held / steps;
}
