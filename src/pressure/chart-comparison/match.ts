import { type Film, numberAt, textAt } from '../../game/film.ts';
import { plainName } from '../../game/plain-name.ts';

/** A snap by its row in each chart. */
export interface SnapPair {
  readonly first: number;
  readonly second: number;
}

/** Why two charts cannot be put together; a chart without snap numbers is named. */
export type NoMatch =
  | { readonly kind: 'no_snap_numbers'; readonly chart: 'first' | 'second' }
  | { readonly kind: 'no_snap_in_both' };

/** The snaps of two charts put together, or why that cannot be done. */
export type SnapMatch =
  | {
      readonly kind: 'matched';
      readonly by: 'game_and_snap' | 'snap';
      readonly pairs: readonly SnapPair[];
      readonly onlyFirst: number;
      readonly onlySecond: number;
    }
  | NoMatch;

/** Puts the snaps of two charts together by game and snap number, by the number alone when each holds one game. */
export function matchSnaps(first: Film, second: Film): SnapMatch {
  const alone = gamesOf(first).size <= 1 && gamesOf(second).size <= 1;
  const [one, other] = [snapKeys(first, alone), snapKeys(second, alone)];
  const lacking = [one, other].findIndex(({ size }) => size === 0);
  if (lacking >= 0) return { kind: 'no_snap_numbers', chart: lacking === 0 ? 'first' : 'second' };
  const pairs = [...one].flatMap(([key, row]): SnapPair[] => {
    const found = other.get(key);
    return found === undefined ? [] : [{ first: row, second: found }];
  });
  if (pairs.length === 0) return { kind: 'no_snap_in_both' };
  return {
    kind: 'matched',
    by: alone ? 'snap' : 'game_and_snap',
    pairs,
    onlyFirst: first.size - pairs.length,
    onlySecond: second.size - pairs.length,
  };
}

function gamesOf(chart: Film): Set<string> {
  const games = new Set<string>();
  for (let i = 0; i < chart.size; i++) {
    const game = textAt(chart, 'game', i);
    if (game !== undefined) games.add(plainName(game));
  }
  return games;
}

/** Row of each snap under its key; of a number used twice the first row counts. */
function snapKeys(chart: Film, alone: boolean): Map<string, number> {
  const keys = new Map<string, number>();
  for (let i = 0; i < chart.size; i++) {
    const snap = numberAt(chart, 'snap', i);
    if (snap === undefined) continue;
    const key = alone ? String(snap) : JSON.stringify([plainName(textAt(chart, 'game', i) ?? ''), snap]);
    if (!keys.has(key)) keys.set(key, i);
  }
  return keys;
}
