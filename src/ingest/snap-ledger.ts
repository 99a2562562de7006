/** Remembers which snaps were read, by game, offense and number. */
export interface SnapLedger {
  /** Enters the snap and says whether it is `new` or was entered before. All three are codes or whole numbers. */
  readonly enter: (snap: { game: number; offense: number; number: number }) => 'new' | 'repeated';
}

/** Codes of games and offenses fit into 16 bits. */
const CODES = 0x10000;

/** Words of 32 snaps, enough for the largest snap number a sheet may hold (9,999). */
const WORDS = Math.ceil(10_000 / 32);

/** An empty ledger. One bit a snap: a whole league's season takes a few megabytes. */
export function createSnapLedger(): SnapLedger {
  const pages = new Map<number, Uint32Array>();
  const pageOf = (key: number): Uint32Array => {
    const found = pages.get(key) ?? new Uint32Array(WORDS);
    pages.set(key, found);
    return found;
  };
  return {
    enter: ({ game, offense, number }) => {
      const page = pageOf(game * CODES + offense);
      const word = number >>> 5;
      const bit = 1 << (number & 31);
      const before = page[word] ?? 0;
      page[word] = before | bit;
      return (before & bit) === 0 ? 'new' : 'repeated';
    },
  };
}
