import { type Film, numberAt, textAt } from '../../game/film.ts';

/**
 * The snaps of every game in the order in which they were played: by number where every snap of the game has one, else
 * by quarter and clock where every snap has both, else as the sheet lists them. A sheet sorted by anything else changes
 * nothing then.
 *
 * @returns indices into the film, game after game in order of appearance
 */
export function gamesInOrder(film: Film): readonly (readonly number[])[] {
  const games = new Map<string, number[]>();
  for (let i = 0; i < film.size; i++) {
    const game = textAt(film, 'game', i) ?? '';
    const rows = games.get(game);
    if (rows) rows.push(i);
    else games.set(game, [i]);
  }
  return [...games.values()].map((rows) => sorted(film, rows));
}

function sorted(film: Film, rows: readonly number[]): readonly number[] {
  for (const momentAt of [numberOf, secondsPlayed]) {
    const moments = new Map(rows.map((row) => [row, momentAt(film, row)]));
    if (rows.some((row) => moments.get(row) === undefined)) continue;
    return [...rows].sort((one, other) => (moments.get(one) ?? 0) - (moments.get(other) ?? 0) || one - other);
  }
  return rows;
}

function numberOf(film: Film, row: number): number | undefined {
  return numberAt(film, 'snap', row);
}

/** Longer than a quarter at any level, in seconds. */
const QUARTER = 1000;

/** Seconds since the game began, were every quarter as long as the longest: enough to put snaps in order. */
function secondsPlayed(film: Film, row: number): number | undefined {
  const [quarter, clock] = [numberAt(film, 'quarter', row), numberAt(film, 'clock', row)];
  return quarter === undefined || clock === undefined ? undefined : quarter * QUARTER - clock;
}
