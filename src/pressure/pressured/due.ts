import type { Crossing } from '../others/cross-count.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { Pattern } from './pattern.ts';
import { PATTERN_ROWS, patternRow } from './pattern.ts';

/** What came in each group, and what was due there whatever they faced. */
export interface GroupDue {
  readonly classes: number;
  /** Snaps of group g and class k at `g * classes + k`. */
  readonly came: Float64Array;
  readonly due: Float64Array;
  /** The offense's own level over all groups together; the pattern's where it faced none. Sums to 1. */
  readonly level: readonly number[];
}

/** Rounds of proportional fitting; twelve leave the shares unchanged in the fourth digit. */
const ROUNDS = 12;
/** Snaps of the pattern added to what came, so that a class not seen yet is rare and not impossible. */
const FLOOR = 1;

/**
 * What one offense showed against each group, and what was due on those very snaps: the pattern of downs and distances,
 * raised or lowered to the offense's own level over all groups together, so that a group says only what changes with it.
 *
 * @param crossing - what they faced and the question, with the situation code of every snap
 * @param rows - the offense's snaps
 * @see Deming and Stephan 1940, Annals of Mathematical Statistics 11:427, proportional fitting
 */
export function groupDue(
  crossing: Crossing & { readonly situationOf: Uint8Array },
  rows: readonly number[],
  pattern: Pattern,
): GroupDue {
  const { groups, classes } = crossing;
  const came = new Float64Array(groups * classes);
  const snaps = new Float64Array(groups * PATTERN_ROWS);
  for (const row of rows) {
    const group = crossing.groupOf[row] as number;
    const k = crossing.classOf[row] as number;
    if (group === NOT_KNOWN || k === NOT_KNOWN) continue;
    add(came, group * classes + k, 1);
    add(snaps, group * PATTERN_ROWS + patternRow(crossing.situationOf[row] as number), 1);
  }
  const counts = { came, snaps, groups, classes };
  return { classes, came, due: dueOf(counts, pattern), level: levelShares(counts, pattern) };
}

function levelShares({ came, snaps, classes }: Counts, pattern: Pattern): readonly number[] {
  const bySituation = foldTo(snaps, PATTERN_ROWS);
  const total = bySituation.reduce((sum, n) => sum + n, 0);
  if (total === 0) return pattern[PATTERN_ROWS - 1] ?? [];
  return Array.from(levelOf(foldTo(came, classes), bySituation, pattern), (count) => count / total);
}

interface Counts {
  readonly came: Float64Array;
  readonly snaps: Float64Array;
  readonly groups: number;
  readonly classes: number;
}

function dueOf({ came, snaps, groups, classes }: Counts, pattern: Pattern): Float64Array {
  const bySituation = foldTo(snaps, PATTERN_ROWS);
  const total = bySituation.reduce((sum, n) => sum + n, 0);
  if (total === 0) return new Float64Array(groups * classes);
  const wanted = levelOf(foldTo(came, classes), bySituation, pattern);
  const raised = raisedPattern(pattern, bySituation, wanted);
  const due = new Float64Array(groups * classes);
  snaps.forEach((n, place) => {
    const [group, row] = [Math.floor(place / PATTERN_ROWS), place % PATTERN_ROWS];
    for (let k = 0; n > 0 && k < classes; k++) add(due, group * classes + k, n * (raised[row]?.[k] as number));
  });
  return due;
}

/** The offense's own level: its snaps and a little of the pattern, scaled back to as many snaps. */
function levelOf(came: Float64Array, snaps: Float64Array, pattern: Pattern): Float64Array {
  const total = snaps.reduce((sum, n) => sum + n, 0);
  return came.map((count, k) => {
    const usual = snaps.reduce((sum, n, row) => sum + n * (pattern[row]?.[k] as number), 0) / total;
    return ((count + FLOOR * usual) * total) / (total + FLOOR);
  });
}

function raisedPattern(pattern: Pattern, snaps: Float64Array, wanted: Float64Array): number[][] {
  const raised = pattern.map((row) => [...row]);
  for (let round = 0; round < ROUNDS; round++) {
    const sums = wanted.map((_, k) => snaps.reduce((sum, n, row) => sum + n * (raised[row]?.[k] as number), 0));
    for (const row of raised) raiseRow(row, wanted, sums);
  }
  return raised;
}

function raiseRow(row: number[], wanted: Float64Array, sums: Float64Array): void {
  let total = 0;
  for (let k = 0; k < row.length; k++) {
    const sum = sums[k] as number;
    if (sum > 0) row[k] = ((row[k] as number) * (wanted[k] as number)) / sum;
    total += row[k] as number;
  }
  for (let k = 0; k < row.length; k++) row[k] = (row[k] as number) / total;
}

/** Sums over the groups: entries of each of `width` columns. */
function foldTo(counts: Float64Array, width: number): Float64Array {
  const folded = new Float64Array(width);
  for (let i = 0; i < counts.length; i++) add(folded, i % width, counts[i] as number);
  return folded;
}

function add(counts: Float64Array, at: number, amount: number): void {
  counts[at] = (counts[at] as number) + amount;
}
