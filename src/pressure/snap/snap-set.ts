/** A set of snaps as bits, 32 to a word. */
export type SnapSet = Uint32Array;

/** The set of the snaps, among `size`, for which `chosen` says so. */
export function snapSet(size: number, chosen: (index: number) => boolean): SnapSet {
  const set = new Uint32Array(Math.ceil(size / 32));
  for (let i = 0; i < size; i++) {
    if (chosen(i)) set[i >>> 5] = (set[i >>> 5] as number) | (1 << (i & 31));
  }
  return set;
}

/** True when the snap is in the set. */
export function holds(set: SnapSet, index: number): boolean {
  return ((set[index >>> 5] as number) & (1 << (index & 31))) !== 0;
}

/** Writes the snaps in both sets over a set of as many words. */
export function intersectInto(both: SnapSet, one: SnapSet, other: SnapSet): void {
  for (let w = 0; w < both.length; w++) both[w] = (one[w] as number) & (other[w] as number);
}

/** How many snaps are in both sets. */
export function sharedCount(one: SnapSet, other: SnapSet): number {
  let count = 0;
  for (let w = 0; w < one.length; w++) count += bitCount((one[w] as number) & (other[w] as number));
  return count;
}

/** How many snaps are in the set. */
export function setSize(set: SnapSet): number {
  return sharedCount(set, set);
}

/** The snaps of a set in ascending order. */
export function members(set: SnapSet): number[] {
  const found: number[] = [];
  for (let w = 0; w < set.length; w++) {
    let word = set[w] as number;
    while (word !== 0) {
      found.push(w * 32 + (31 - Math.clz32(word & -word)));
      word &= word - 1;
    }
  }
  return found;
}

/** True when both sets hold the same snaps. */
export function sameSet(one: SnapSet, other: SnapSet): boolean {
  for (let w = 0; w < one.length; w++) if (one[w] !== other[w]) return false;
  return true;
}

/** A whole number that equal sets share and different sets seldom do. @see Fowler, Noll and Vo, FNV-1a */
export function setHash(set: SnapSet): number {
  let hash = 0x811c9dc5;
  for (let w = 0; w < set.length; w++) {
    const word = set[w] as number;
    hash = Math.imul(hash ^ (word & 0xffff), 0x01000193);
    hash = Math.imul(hash ^ (word >>> 16), 0x01000193);
  }
  return hash >>> 0;
}

/** Bits set in a word. @see Warren, Hacker's Delight, population count */
function bitCount(word: number): number {
  let bits = word - ((word >>> 1) & 0x55555555);
  bits = (bits & 0x33333333) + ((bits >>> 2) & 0x33333333);
  return Math.imul((bits + (bits >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}
