/** A word further away than this many slips of the pen is not offered; judgment, as in most command lines. */
const MOST_SLIPS = 3;

/**
 * The one known word the writer most likely meant: the only word it abbreviates, else the closest one by slips of the
 * pen (letters added, dropped, changed or swapped), when fewer than half of its letters differ. Undefined when nothing
 * is close, or when the word is known already. Case is ignored.
 */
export function nearestWord(written: string, words: readonly string[]): string | undefined {
  const plain = written.trim().toLowerCase();
  if (plain === '' || words.some((word) => word.toLowerCase() === plain)) return undefined;
  const longer = words.filter((word) => word.toLowerCase().startsWith(plain));
  if (longer.length === 1) return longer[0];
  return closestWord(plain, words);
}

function closestWord(plain: string, words: readonly string[]): string | undefined {
  let best: string | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  for (const word of words) {
    const slips = slipsBetween(plain, word.toLowerCase());
    const allowed = Math.min(MOST_SLIPS, Math.ceil(Math.max(plain.length, word.length) / 2) - 1);
    if (slips <= allowed && slips < fewest) {
      best = word;
      fewest = slips;
    }
  }
  return best;
}

/**
 * How many slips (insert, delete, change, swap of two neighbors) turn one word into the other: the optimal string
 * alignment distance. Words that differ in length by more than three are not compared.
 *
 * @see Damerau 1964, "A technique for computer detection and correction of spelling errors"
 */
export function slipsBetween(left: string, right: string): number {
  if (Math.abs(left.length - right.length) > MOST_SLIPS) return Number.POSITIVE_INFINITY;
  let beforeLast: number[] = [];
  let last = Array.from({ length: right.length + 1 }, (_, j) => j);
  for (let i = 1; i <= left.length; i++) {
    const row = [i];
    for (let j = 1; j <= right.length; j++) {
      const change = left[i - 1] === right[j - 1] ? 0 : 1;
      const steps = [at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + change];
      if (swapped({ left, right, i, j })) steps.push(at(beforeLast, j - 2) + 1);
      row.push(Math.min(...steps));
    }
    beforeLast = last;
    last = row;
  }
  return at(last, right.length);
}

function at(row: readonly number[], index: number): number {
  return row[index] ?? Number.POSITIVE_INFINITY;
}

function swapped({ left, right, i, j }: { left: string; right: string; i: number; j: number }): boolean {
  return i > 1 && j > 1 && left[i - 1] === right[j - 2] && left[i - 2] === right[j - 1];
}
