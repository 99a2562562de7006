import { columnLetter } from '../column-letter.ts';
import { headerKey } from '../sheet-dialect.ts';
import type { SideBySide } from '../side-by-side.ts';

/** Fewer columns than this repeat by chance (hash 1, hash 2); judgment. */
const FEWEST_COLUMNS = 3;

/**
 * Whether a sheet lists several snaps beside one another: the same headers, but for a number at their end, come again
 * in the same order. Undefined when they do not.
 */
export function findSideBySide(headers: readonly string[]): SideBySide | undefined {
  const keys = headers.map(baseKey);
  for (let width = Math.floor(keys.length / 2); width >= FEWEST_COLUMNS; width--) {
    for (let start = 0; start + 2 * width <= keys.length; start++) {
      const snaps = repeats(keys, start, width);
      if (snaps > 1) return smallest(keys, { start, width, snaps });
    }
  }
  return undefined;
}

/** Four snaps of three columns also look like two of six. */
function smallest(keys: readonly string[], found: { start: number; width: number; snaps: number }): SideBySide {
  const { start, width, snaps } = found;
  for (let part = FEWEST_COLUMNS; part < width; part++) {
    if (width % part === 0 && repeats(keys, start, part) === (width / part) * snaps) {
      return { first: columnLetter(start), width: part, snaps: (width / part) * snaps };
    }
  }
  return { first: columnLetter(start), width, snaps };
}

/** How often the block at `start` comes again right behind itself; 1 when it does not, or when it is no proper block. */
function repeats(keys: readonly string[], start: number, width: number): number {
  const block = keys.slice(start, start + width);
  if (block.includes('') || new Set(block).size < width) return 1;
  let snaps = 1;
  while (block.every((key, i) => keys[start + snaps * width + i] === key)) snaps++;
  return snaps;
}

/** The header without a number at its end: `Dn 2`, `Dn_2`, `Dn (2)`, `Dn.1` are all `dn`. */
function baseKey(header: string): string {
  return headerKey(header).replace(/[\s_.(#]*\d+\)?$/, '');
}
