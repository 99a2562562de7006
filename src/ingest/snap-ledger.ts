import { FIRST_MOMENT } from './snap-identity.ts';

/** Remembers which snaps were read, by game, offense and identity. */
export interface SnapLedger {
  /** Enters the snap and says whether it is `new` or was entered before. All three are codes or whole numbers. */
  readonly enter: (snap: { game: number; offense: number; number: number }) => 'new' | 'repeated';
}

/** Codes of games and offenses fit into 16 bits. */
const CODES = 0x10000;

/** Words of 32 snaps a game gets at first: 128 snaps are enough for most; it doubles when they are used up. */
const FIRST_WORDS = 4;

/** An empty ledger. One bit a numbered snap: a whole league's season takes a few megabytes. */
export function createSnapLedger(): SnapLedger {
  const pages = new Map<number, Uint32Array>();
  const moments = new Map<number, Set<number>>();
  return {
    enter: ({ game, offense, number }) => {
      const key = game * CODES + offense;
      if (number >= FIRST_MOMENT) return enterMoment(moments, key, number);
      const page = pageFor(pages, key, number >>> 5);
      const bit = 1 << (number & 31);
      const before = page[number >>> 5] ?? 0;
      page[number >>> 5] = before | bit;
      return (before & bit) === 0 ? 'new' : 'repeated';
    },
  };
}

/** The bits of a game and offense, with room for word `word`. */
function pageFor(pages: Map<number, Uint32Array>, key: number, word: number): Uint32Array {
  const found = pages.get(key);
  if (found && word < found.length) return found;
  const page = new Uint32Array(Math.max(FIRST_WORDS, 2 ** Math.ceil(Math.log2(word + 1))));
  if (found) page.set(found);
  pages.set(key, page);
  return page;
}

function enterMoment(moments: Map<number, Set<number>>, key: number, moment: number): 'new' | 'repeated' {
  const seen = moments.get(key) ?? new Set<number>();
  moments.set(key, seen);
  if (seen.has(moment)) return 'repeated';
  seen.add(moment);
  return 'new';
}
