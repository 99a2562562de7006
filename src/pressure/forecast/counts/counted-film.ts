import { NOT_KNOWN } from '../../snap/not-known.ts';
import type { OffenseGame } from '../../snap/offense-game.ts';
import { joinCells, joinCodes, type SnapCells } from '../../snap/snap-cells.ts';
import { type CodesOf, type ForecastFilm, filmTrees, rowsByOffense } from '../forecast-film.ts';
import type { TargetDefinition } from '../target.ts';
import { ANY, COUNT_SITUATIONS, COUNT_STATES, type CountRow, GAMES, SNAPS } from './count-row.ts';

/**
 * The film with tallies of other offenses added to its archive. A row of tallies joins as one snap of its situation and
 * state that stands for `count` of them; what was seen of the look is in no tally, so there it counts as not charted.
 *
 * @param counts - tallies that are valid words; those of the opponent itself must not be among them
 */
export function withCounts(film: ForecastFilm, counts: readonly CountRow[]): ForecastFilm {
  const rows = counts.filter(({ target }) => target !== GAMES);
  if (rows.length === 0) return film;
  const cells = joinCells(film.cells, cellsOf(rows));
  return {
    ...film,
    cells,
    archiveRows: new Map([...film.archiveRows, ...rowsByOffense(countedRows(rows, film.cells.size))]),
    archiveGames: [...film.archiveGames, ...countedGames(counts, rows, film.cells.size)],
    ...filmTrees(cells, film.ownSize),
    snapWeights: joinWeights(film, rows, SNAPS),
    chartedCodesOf: withTallies(film, rows, film.chartedCodesOf),
    codesOf: withTallies(film, rows, film.codesOf),
  };
}

function withTallies(film: ForecastFilm, rows: readonly CountRow[], codesOf: CodesOf): CodesOf {
  return (definition) => {
    const { codes, classes } = codesOf(definition);
    const weights = joinWeights(film, rows, definition.target);
    return { classes, codes: joinCodes(codes, classCodes(rows, definition)), weights };
  };
}

function cellsOf(rows: readonly CountRow[]): SnapCells {
  const unseen = () => new Uint8Array(rows.length).fill(NOT_KNOWN);
  const codes = (words: readonly string[], of: (row: CountRow) => string) =>
    Uint8Array.from(rows, (row) => codeIn(words, of(row)));
  return {
    size: rows.length,
    situation: codes(COUNT_SITUATIONS, ({ situation }) => situation),
    moment: codes(COUNT_STATES, ({ state }) => state),
    look: unseen(),
    receivers: unseen(),
    backSpot: unseen(),
  };
}

function classCodes(rows: readonly CountRow[], { target, classes }: TargetDefinition): Uint8Array {
  return Uint8Array.from(rows, (row) => (row.target === target ? codeIn(classes, row.class) : NOT_KNOWN));
}

function codeIn(words: readonly string[], word: string): number {
  const code = words.indexOf(word);
  return code === -1 ? NOT_KNOWN : code;
}

/** How many snaps each row stands for where a target is asked for: a charted snap one, a tally of the target its count. */
function joinWeights(film: ForecastFilm, rows: readonly CountRow[], target: string): Float64Array {
  const weights = new Float64Array(film.cells.size + rows.length).fill(1, 0, film.cells.size);
  rows.forEach((row, i) => {
    weights[film.cells.size + i] = row.target === target ? row.count : 0;
  });
  return weights;
}

/**
 * The games behind tallies. Tallies do not say which snap was in which game; where a target was charted in three games,
 * one of its tallies stands in each of the first three.
 *
 * @param first - place of the first tally among the film's snaps
 */
function countedGames(counts: readonly CountRow[], rows: readonly CountRow[], first: number): OffenseGame[] {
  const found = new Map<string, CountedOffense>();
  const offenseAt = (name: string) => {
    const offense = found.get(name) ?? { games: new Map<string, number>(), examples: new Map<string, number>() };
    found.set(name, offense);
    return offense;
  };
  for (const row of counts) {
    const { games } = offenseAt(row.offense);
    if (row.target === GAMES) games.set(row.class, (games.get(row.class) ?? 0) + row.count);
  }
  rows.forEach(({ offense, target, count }, i) => {
    if (count > 0 && target !== SNAPS) offenseAt(offense).examples.set(target, first + i);
  });
  return [...found].flatMap(([offense, counted]) => gamesOf(offense, counted));
}

/** Every tally as rows of its offense. */
function countedRows(rows: readonly CountRow[], first: number): OffenseGame[] {
  return rows.map(({ offense }, i) => ({ offense, game: '', week: Number.POSITIVE_INFINITY, rows: [first + i] }));
}

interface CountedOffense {
  /** Games by the target charted in them, and in all under {@link ANY}. */
  readonly games: Map<string, number>;
  /** Place of one tally of each target. */
  readonly examples: Map<string, number>;
}

function gamesOf(offense: string, { games, examples }: CountedOffense): OffenseGame[] {
  const charted = [...examples].map(([target, row]) => ({ row, games: Math.max(1, games.get(target) ?? 0) }));
  const all = Math.max(games.get(ANY) ?? 0, ...charted.map((each) => each.games));
  return Array.from({ length: all }, (_, game) => ({
    offense,
    game: `counted ${game + 1}`,
    week: Number.POSITIVE_INFINITY,
    rows: charted.filter((each) => game < each.games).map(({ row }) => row),
  }));
}
