import { SITUATIONS } from '../../../game/situations.ts';
import { GAME_STATES } from '../../snap/game-state.ts';
import { TARGET_DEFINITIONS } from '../target.ts';

/**
 * One tally of one offense: on how many snaps of a situation and state the class of a target was seen. Rows are sums, so
 * the tallies of two sets of games together are the rows of both.
 */
export interface CountRow {
  readonly offense: string;
  /** A situation's id; empty where down or distance was not charted. */
  readonly situation: string;
  /** One of {@link COUNT_STATES}; empty where it is not known. */
  readonly state: string;
  /** A forecast target, `snap` for every snap whatever else was charted, or `games` for games in place of snaps. */
  readonly target: string;
  /** A class of the target; `any` for `snap`; for `games`, `any` or the target that was charted in them. */
  readonly class: string;
  readonly count: number;
}

/** The columns of a file of tallies, in order: long, one number a row, so that any engine can make or sum them. */
export const COUNT_COLUMNS = ['offense', 'situation', 'state', 'target', 'class', 'count'] as const;
/** One word of {@link COUNT_COLUMNS}. */
export type CountColumn = (typeof COUNT_COLUMNS)[number];

/** Words of the situation column, in the order of the codes. */
export const COUNT_SITUATIONS: readonly string[] = SITUATIONS.map(({ id }) => id);

/** Words of the state column, in the order of the codes: each game state, and with more than ten to go after 1st down. */
export const COUNT_STATES: readonly string[] = GAME_STATES.flatMap(({ id }) => [id, `${id}_beyond_ten`]);

/** Target of the rows that count snaps whatever else was charted on them. */
export const SNAPS = 'snap';

/** Target of the rows that count games. */
export const GAMES = 'games';

/** Class of every snap, and of every game. */
export const ANY = 'any';

/** The classes that may stand beside each target of a file of tallies. */
export const COUNT_CLASSES: ReadonlyMap<string, readonly string[]> = new Map([
  [SNAPS, [ANY]],
  ...TARGET_DEFINITIONS.map(({ target, classes }) => [target, classes] as const),
  [GAMES, [ANY, ...TARGET_DEFINITIONS.map(({ target }) => target)]],
]);

/** Snaps that tallies stand for. */
export function countedSnaps(rows: readonly CountRow[]): number {
  return rows.reduce((sum, { target, count }) => sum + (target === SNAPS ? count : 0), 0);
}
