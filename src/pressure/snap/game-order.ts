import { groupBy } from '../../game/by-word.ts';
import { type Film, numberAt, rowsOf, selectSnaps, textAt } from '../../game/film.ts';

/**
 * The snaps of every game in the order in which they were played: by number where every snap of the game has one, else
 * by quarter and clock where every snap has both, else as the sheet lists them. A sheet sorted by anything else changes
 * nothing then.
 *
 * @returns indices into the film, game after game in order of appearance
 */
export function gamesInOrder(film: Film): readonly (readonly number[])[] {
  const games = groupBy(rowsOf(film), (row) => textAt(film, 'game', row) ?? '');
  return [...games.values()].map((rows) => sorted(film, rows));
}

/**
 * The film with its snaps in the order in which they were played, so that nothing worked out from it depends on how a
 * sheet is sorted: game after game by week where every game has one, else in order of appearance; within a game as
 * {@link gamesInOrder}. A film that is in order already is given back itself.
 */
export function inOrderOfPlay(film: Film): Film {
  const games = gamesInOrder(film);
  const weeks = new Map(games.map((rows) => [rows, weekOf(film, rows)]));
  const all = [...weeks.values()].every((week) => week !== undefined);
  const weekAt = (rows: readonly number[]) => (all ? (weeks.get(rows) ?? 0) : 0);
  const nameAt = (rows: readonly number[]) => (all ? (textAt(film, 'game', rows[0] ?? 0) ?? '') : '');
  const rows = [...games]
    .sort((one, other) => weekAt(one) - weekAt(other) || compareWords(nameAt(one), nameAt(other)))
    .flat();
  return rows.every((row, place) => row === place) ? film : selectSnaps(film, rows);
}

/** The first week charted in a game. */
function weekOf(film: Film, rows: readonly number[]): number | undefined {
  const weeks = rows.map((row) => numberAt(film, 'week', row)).filter((week) => week !== undefined);
  return weeks.length === 0 ? undefined : Math.min(...weeks);
}

function compareWords(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}

function sorted(film: Film, rows: readonly number[]): readonly number[] {
  for (const momentAt of [numberOf, secondsPlayed]) {
    const timed = rows.flatMap((row) => {
      const moment = momentAt(film, row);
      return moment === undefined ? [] : [{ row, moment }];
    });
    if (timed.length < rows.length) continue;
    return timed.sort((one, other) => one.moment - other.moment || one.row - other.row).map(({ row }) => row);
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
