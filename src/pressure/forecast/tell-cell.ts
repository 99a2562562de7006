import { intersectInto, type SnapSet, sameSet, setHash, sharedCount, snapSet } from '../snap/snap-set.ts';
import type { FeatureName, SeenValue, TellFeature } from './tell-feature.ts';

/** Snaps that share up to three things seen before the snap. */
export interface TellCell {
  readonly seen: readonly SeenValue[];
  readonly snaps: SnapSet;
}

/** Fewer charted snaps than this are not looked at: the filter that is set without looking at the outcome. */
export const LEAST_CELL_SNAPS = 8;
/** A tell is made of at most so many features; more could not be watched for on the field (judgment). */
export const MOST_FEATURES = 3;

/** One thing seen before the snap, and the snaps it was seen on. */
export interface TellLiteral extends TellCell {
  readonly feature: FeatureName;
  /** Place of the feature in the list. */
  readonly place: number;
}

/** Every value of every feature, in the order of the features. @param size - number of snaps */
export function tellLiterals(features: readonly TellFeature[], size: number): readonly TellLiteral[] {
  return features.flatMap((feature, place) => {
    const found = Array.from({ length: size }, (_, i) => feature.valueAt(i));
    const values = [...new Set(found)].filter((value) => value !== undefined).sort();
    return values.map((value) => ({
      seen: [{ feature: feature.name, value }],
      snaps: snapSet(size, (i) => found[i] === value),
      feature: feature.name,
      place,
    }));
  });
}

/**
 * All conjunctions of up to three features with at least eight charted snaps. Conjunctions that pick the very same
 * snaps are one cell, under the fewest features.
 *
 * @param literals - what may be seen, feature by feature
 * @param charted - snaps on which the target was charted
 */
export function tellCells(literals: readonly TellLiteral[], charted: SnapSet): readonly TellCell[] {
  const usable = literals.filter(({ snaps }) => sharedCount(snaps, charted) >= LEAST_CELL_SNAPS);
  const taken = new Map<number, SnapSet[]>();
  let grown: Candidate[] = [{ seen: [], snaps: charted, place: -1 }];
  const cells: TellCell[] = [];
  for (let length = 1; length <= MOST_FEATURES; length++) {
    grown = grown.flatMap((cell) => extensions(cell, usable, taken));
    cells.push(...grown);
  }
  return cells;
}

/** A cell with the place of its last feature, so that every conjunction is built once. */
type Candidate = Omit<TellLiteral, 'feature'>;

/** The cell joined with each further literal, where that picks enough snaps and no set picked before. */
function extensions(cell: Candidate, literals: readonly TellLiteral[], taken: Map<number, SnapSet[]>): Candidate[] {
  const found: Candidate[] = [];
  const both = new Uint32Array(cell.snaps.length);
  for (let i = 0; i < literals.length; i++) {
    const literal = literals[i] as TellLiteral;
    if (literal.place <= cell.place) continue;
    const size = sharedCount(literal.snaps, cell.snaps);
    if (size < LEAST_CELL_SNAPS) continue;
    intersectInto(both, literal.snaps, cell.snaps);
    const snaps = newSet(both, size, taken);
    if (snaps) found.push({ seen: [...cell.seen, ...literal.seen], snaps, place: literal.place });
  }
  return found;
}

/**
 * A copy of the set the first time it comes, null after that. A set that is dropped need not be grown: the conjunction
 * it equals has no more features and, joined with the same further feature in the order of the list, picks the same
 * snaps.
 */
function newSet(set: SnapSet, size: number, seen: Map<number, SnapSet[]>): SnapSet | null {
  const key = setHash(set) * 4096 + (size % 4096);
  const known = seen.get(key);
  if (known?.some((other) => sameSet(other, set))) return null;
  const kept = set.slice();
  if (known) known.push(kept);
  else seen.set(key, [kept]);
  return kept;
}
