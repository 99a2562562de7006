import type { Film } from '../../game/film.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { type OffenseGame, offenseGames } from '../snap/offense-game.ts';
import type { Counted, OffenseShare } from './against-others.ts';

/** Two questions asked of every snap of a chart, as codes; 255 where one was not charted or does not apply. */
export interface Crossing {
  readonly groupOf: Uint8Array;
  readonly groups: number;
  readonly classOf: Uint8Array;
  readonly classes: number;
}

/** Snaps of group g and class k at `g * classes + k`, of one game or of all games of one offense. */
export interface CrossCount {
  readonly offense: string;
  readonly game: string;
  readonly classes: number;
  readonly counts: Float64Array;
}

/** One game's count of a class. */
export interface GameCount extends Counted {
  readonly game: string;
}

/** A chart and its games. */
export interface FilmGames {
  readonly film: Film;
  readonly games: readonly OffenseGame[];
}

/** A chart with its games; of no chart, null. */
export function filmGames(film: Film | null): FilmGames | null {
  return film === null || film.size === 0 ? null : { film, games: offenseGames(film) };
}

/** The crossing counted in each game. */
export function crossByGame(games: readonly OffenseGame[], crossing: Crossing): readonly CrossCount[] {
  return games.map(({ offense, game, rows }) => {
    return { offense, game, classes: crossing.classes, counts: countRows(crossing, rows) };
  });
}

/** The crossing counted over all games of each offense, which is then no game's. */
export function crossByOffense(games: readonly OffenseGame[], crossing: Crossing): readonly CrossCount[] {
  const found = new Map<string, CrossCount>();
  for (const { offense, rows } of games) {
    const counts = countRows(crossing, rows);
    const known = found.get(offense);
    if (known) addCounts(known.counts, counts);
    else found.set(offense, { offense, game: '', classes: crossing.classes, counts });
  }
  return [...found.values()];
}

/** How often a class came in a group: its count of all classes' count there. */
export function cellOf({ classes, counts }: CrossCount, group: number, k: number): Counted {
  let trials = 0;
  for (let other = 0; other < classes; other++) trials += counts[group * classes + other] as number;
  return { count: counts[group * classes + k] as number, trials };
}

/** A class in a group, game by game, where the group was seen at all. */
export function gameCells(games: readonly CrossCount[], group: number, k: number): readonly GameCount[] {
  return games.flatMap((game) => {
    const cell = cellOf(game, group, k);
    return cell.trials === 0 ? [] : [{ game: game.game, ...cell }];
  });
}

/** A class in a group, offense by offense, where the group was seen at all. */
export function offenseCells(offenses: readonly CrossCount[], group: number, k: number): readonly OffenseShare[] {
  return offenses.flatMap((offense) => {
    const cell = cellOf(offense, group, k);
    return cell.trials === 0 ? [] : [{ offense: offense.offense, ...cell }];
  });
}

function addCounts(sums: Float64Array, more: Float64Array): void {
  for (let i = 0; i < sums.length; i++) sums[i] = (sums[i] as number) + (more[i] as number);
}

function countRows({ groupOf, groups, classOf, classes }: Crossing, rows: readonly number[]): Float64Array {
  const counts = new Float64Array(groups * classes);
  for (const row of rows) {
    const group = groupOf[row] as number;
    const k = classOf[row] as number;
    if (group === NOT_KNOWN || k === NOT_KNOWN) continue;
    counts[group * classes + k] = (counts[group * classes + k] as number) + 1;
  }
  return counts;
}
