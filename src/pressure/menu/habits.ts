/** What our film shows behind one of our paths, and what it asks of this week. */
export interface PathHabit {
  readonly path: string;
  /** Pressures of the path on our film with their coverage charted. */
  readonly snaps: number;
  /** The path's usual coverage and the calls a game that are to come with another one; null where nothing is to be mended. */
  readonly changeUp: ChangeUp | null;
}

/** Calls of a path that must come with another coverage than the usual one, as long as that one is carried. */
export interface ChangeUp {
  readonly usual: string;
  /** Calls a game, above 0. */
  readonly calls: number;
}

/** Our games that an opponent has on film: full games are exchanged, three or four of them. Common practice, no source. */
export const READER_GAMES = 4;

/** A path that keeps the cap shows one coverage throughout less often than this on the film that gives it away. */
const SURPRISING = 0.05;

/**
 * The fewest snaps of a path on which one coverage throughout would be seen in under 5% of cases if the cap were kept:
 * a reader cannot tell less film from a path that is mixed. Nothing is said at a cap of 1.
 *
 * @example readableSnaps(0.7) // 9
 */
export function readableSnaps(cap: number): number {
  if (cap >= 1) return Number.POSITIVE_INFINITY;
  return cap <= SURPRISING ? 1 : Math.ceil(Math.log(SURPRISING) / Math.log(cap) - 1e-9);
}

/**
 * Calls a game of a path that the pairing cap does not count, because four games of them give nothing away; none for a
 * path of which our film already shows enough to be read.
 *
 * @param snaps - the path's snaps on our film; 0 when it was never called
 * @example uncountedCalls(0.7, 0) // 2
 * @example uncountedCalls(0.7, 12) // 0
 */
export function uncountedCalls(cap: number, snaps: number): number {
  if (cap >= 1) return 0;
  const readable = readableSnaps(cap);
  return snaps >= readable ? 0 : (readable - 1) / READER_GAMES;
}

/**
 * Largest share of our pressures on which a reader who knows every path's usual coverage may be right, so that four games
 * of film hardly ever show more than the cap by chance.
 *
 * @param cap - 0 to 1
 * @param pressures - pressures a game
 * @example quietShare(0.7, 23) // 0.604
 */
export function quietShare(cap: number, pressures: number): number {
  const error = Math.sqrt((cap * (1 - cap)) / Math.max(1, READER_GAMES * pressures));
  return Math.max(0, cap - QUIET_ERRORS * error);
}

/** Standard errors between what is planned and the cap: film of one season in forty shows more. Judgment. */
const QUIET_ERRORS = 2;
