import { intersect, type SnapSet, sameSet, setHash, setSize, sharedCount, snapSet } from '../snap/snap-set.ts';
import type { TellFeature } from './tell-feature.ts';

/** Snaps that share up to three things seen before the snap. */
export interface TellCell {
  readonly words: readonly string[];
  readonly snaps: SnapSet;
}

/** Fewer charted snaps than this are not looked at: the filter that is set without looking at the outcome. */
export const LEAST_CELL_SNAPS = 8;
/** A tell is made of at most so many features; more could not be watched for on the field (judgement). */
export const MOST_FEATURES = 3;

/**
 * All conjunctions of up to three features with at least eight charted snaps. Conjunctions that pick the very same
 * snaps are one cell, under the description with the fewest features.
 *
 * @param features - what may be seen
 * @param charted - snaps on which the target was charted
 * @param size - number of snaps
 */
export function tellCells(features: readonly TellFeature[], charted: SnapSet, size: number): readonly TellCell[] {
  const literals = features.flatMap((feature, place) => literalsOf(feature, place, size)).filter(enough(charted));
  const seen = new Map<number, Candidate[]>();
  let grown: Candidate[] = [{ words: [], snaps: charted, place: -1 }];
  const cells: TellCell[] = [];
  for (let length = 1; length <= MOST_FEATURES; length++) {
    grown = grown.flatMap((cell) => extensions(cell, literals, charted)).filter(isNew(seen));
    cells.push(...grown);
  }
  return cells;
}

/** A cell with the place of its last feature, so that every conjunction is built once. */
interface Candidate extends TellCell {
  readonly place: number;
}

function literalsOf(feature: TellFeature, place: number, size: number): Candidate[] {
  const words = Array.from({ length: size }, (_, i) => feature.wordsAt(i));
  const values = [...new Set(words)].filter((word) => word !== undefined).sort();
  return values.map((value) => ({ words: [value], snaps: snapSet(size, (i) => words[i] === value), place }));
}

function enough(charted: SnapSet): (cell: TellCell) => boolean {
  return ({ snaps }) => sharedCount(snaps, charted) >= LEAST_CELL_SNAPS;
}

function extensions(cell: Candidate, literals: readonly Candidate[], charted: SnapSet): Candidate[] {
  return literals
    .filter(({ place, snaps }) => place > cell.place && sharedCount(snaps, cell.snaps) >= LEAST_CELL_SNAPS)
    .map(({ words, snaps, place }) => {
      return { words: [...cell.words, ...words], snaps: intersect(intersect(cell.snaps, snaps), charted), place };
    });
}

/**
 * Lets each snap set pass once. A set that is dropped need not be grown: the conjunction it equals has no more features
 * and, joined with the same further feature in the order of the list, picks the same snaps.
 */
function isNew(seen: Map<number, Candidate[]>): (cell: Candidate) => boolean {
  return (cell) => {
    const key = setHash(cell.snaps) * 4096 + (setSize(cell.snaps) % 4096);
    const known = seen.get(key) ?? [];
    if (known.some(({ snaps }) => sameSet(snaps, cell.snaps))) return false;
    seen.set(key, [...known, cell]);
    return true;
  };
}
