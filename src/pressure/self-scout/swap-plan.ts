import { READER_GAMES } from '../menu/habits.ts';
import { type FilmPath, favoriteSnaps } from './film-path.ts';
import type { SwapCell } from './swap-cell.ts';

/** Our film and the games to come, if nothing changes. */
export interface SwapProblem {
  readonly paths: readonly FilmPath[];
  /** Swaps that are open, of the paths that can be read. */
  readonly cells: readonly SwapCell[];
  readonly filmGames: number;
  readonly cap: number;
}

/** The fewest swaps by a number of games, and where that leaves a reader of our film. */
export interface SwapPlan {
  readonly games: number;
  /** Swaps needed in all, and those that the open cells allow. */
  readonly needed: number;
  readonly done: number;
  /** Snaps swapped, by cell of the problem. */
  readonly byCell: readonly number[];
  readonly costPoints: number;
  /** Share of the film he has by then on which one who guesses each path's usual coverage is right. */
  readonly reaches: number;
  /** Pressures expected in these games. */
  readonly coming: number;
}

/**
 * The fewest snaps to swap in the next games so that each path's usual coverage follows on no more than the cap's share
 * of the film an opponent has by then: the last games up to {@link READER_GAMES}, old ones at our usual rates. Every swap takes one right guess away, wherever it is made, so the fewest are given by a count; of equal
 * numbers the cheapest by the scores are taken, cell by cell. That is exact: cells and paths only bound how many may be
 * taken (a greedy choice on a laminar family).
 *
 * @see Edmonds 1971, Mathematical Programming 1:127, greedy choice on matroids
 */
export function swapPlan({ paths, cells, filmGames, cap }: SwapProblem, games: number): SwapPlan {
  const ratio = games / filmGames;
  const window = ratio + Math.min(filmGames, Math.max(0, READER_GAMES - games)) / filmGames;
  const snaps = paths.reduce((sum, path) => sum + path.snaps, 0);
  const right = paths.reduce((sum, path) => sum + favoriteSnaps(path), 0);
  const [allSnaps, allRight] = [snaps * window, right * window];
  const needed = Math.max(0, Math.ceil(allRight - cap * allSnaps - SLACK));
  const byCell = fill(cells, { needed, ratio, room: pathRooms(paths, { ratio, window, cap }) });
  const done = byCell.reduce((sum, times) => sum + times, 0);
  const costPoints = cells.reduce((sum, { cost }, i) => sum + (byCell[i] as number) * cost, 0);
  const reaches = allSnaps === 0 ? 0 : (allRight - done) / allSnaps;
  return { games, needed, done, byCell, costPoints, reaches, coming: snaps * ratio };
}

const SLACK = 1e-9;

/**
 * Swaps a path can take: what it comes to in these games without becoming another habit. The other coverage must not
 * exceed the cap on the coming snaps, nor become the usual one of the film he has.
 */
function pathRooms(
  paths: readonly FilmPath[],
  { ratio, window, cap }: { readonly ratio: number; readonly window: number; readonly cap: number },
): Map<string, number> {
  return new Map(
    paths.map((path) => {
      const [usual, second] = [favoriteSnaps(path), path.coverages[1]?.snaps ?? 0];
      const coming = ratio * (usual - (1 - cap) * path.snaps);
      const untilTie = (window * (usual - second)) / 2;
      return [path.path, Math.max(0, Math.min(coming, untilTie))];
    }),
  );
}

function fill(
  cells: readonly SwapCell[],
  { needed, ratio, room }: { readonly needed: number; readonly ratio: number; readonly room: Map<string, number> },
): number[] {
  const byCell = cells.map(() => 0);
  const order = cells.map((_, i) => i).sort((a, b) => (cells[a] as SwapCell).cost - (cells[b] as SwapCell).cost);
  let left = needed;
  for (const i of order) {
    const cell = cells[i] as SwapCell;
    const free = room.get(cell.path) as number;
    const times = Math.min(left, cell.snaps * ratio, free);
    byCell[i] = times;
    left -= times;
    room.set(cell.path, free - times);
  }
  return byCell;
}
