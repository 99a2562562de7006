import { codeAt, type Film, numberAt, textAt } from '../../game/film.ts';

/** The snaps of one offense in one game. */
export interface OffenseGame {
  /** Name of the offense; where it was not charted, the file it came from. */
  readonly offense: string;
  /** Name of the game; empty where it was not charted. */
  readonly game: string;
  /** Week of its first snap with a week; Infinity where none was charted. */
  readonly week: number;
  /** Indices into the chart, in its order. */
  readonly rows: readonly number[];
}

/** Every offense's games, in order of week, then of appearance in the chart. */
export function offenseGames(chart: Film): readonly OffenseGame[] {
  const found = new Map<string, GrowingGame>();
  const gameOf = gameReader(chart, found);
  for (let i = 0; i < chart.size; i++) {
    const game = gameOf(i);
    if (game.week === Number.POSITIVE_INFINITY) game.week = numberAt(chart, 'week', i) ?? game.week;
    game.rows.push(i);
  }
  return [...found.values()].sort((a, b) => (a.week === b.week ? 0 : a.week - b.week));
}

type GrowingGame = OffenseGame & { week: number; rows: number[] };

/** The game of a snap, by its names but once for all snaps with the same codes, and added to `found` when it is new. */
function gameReader(chart: Film, found: Map<string, GrowingGame>): (index: number) => GrowingGame {
  const known = new Map<number, GrowingGame>();
  return (i) => {
    const offenseCode = codeAt(chart, 'offense', i);
    const side = offenseCode === 0 ? CODES + (chart.sourceOf[i] as number) : offenseCode;
    const key = side * CODES + codeAt(chart, 'game', i);
    const game = known.get(key) ?? gameNamed(chart, i, found);
    known.set(key, game);
    return game;
  };
}

/** Codes of words and files fit into 16 bits. */
const CODES = 0x10000;

function gameNamed(chart: Film, index: number, found: Map<string, GrowingGame>): GrowingGame {
  const offense = textAt(chart, 'offense', index) ?? chart.sources[chart.sourceOf[index] as number] ?? '';
  const game = textAt(chart, 'game', index) ?? '';
  const key = JSON.stringify([offense, game]);
  const named = found.get(key) ?? { offense, game, week: Number.POSITIVE_INFINITY, rows: [] };
  found.set(key, named);
  return named;
}
