import { groupBy } from '../../game/by-word.ts';
import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { classifiedAnswers } from '../snap/classified-answers.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { type OffenseGame, offenseGames } from '../snap/offense-game.ts';
import { joinCells, joinCodes, lineLevels, planLevels, type SnapCells, snapCells } from '../snap/snap-cells.ts';
import { archiveFit, fitChain } from './chain.ts';
import type { ChainArchive, ChainData } from './chain-data.ts';
import type { ChainFit } from './chain-fit.ts';
import { type ChainTally, type TargetCodes, tallyGame, tallyGames } from './chain-tally.ts';
import { type ChainTree, chainTree } from './chain-tree.ts';
import { countLeague } from './league-count.ts';
import { type LeagueWorth, leagueWorth } from './league-worth.ts';
import { hidesPasses, splitByRunOrPass } from './split-by-run-or-pass.ts';
import { RUN_OR_PASS, type TargetDefinition } from './target.ts';
import { lineStrengths, TARGET_STRENGTHS } from './target-strengths.ts';

/** Before the look is known, or with it. */
export type ChainKind = 'plan' | 'line';

/** The opponent's film and the archive as one set of snaps: the opponent's first, in their chart's order. */
export interface ForecastFilm {
  readonly cells: SnapCells;
  readonly ownSize: number;
  readonly ownGames: readonly OffenseGame[];
  /** Games of other offenses; their rows count on from `ownSize`. */
  readonly archiveGames: readonly OffenseGame[];
  /** The snaps of each offense of the archive, one list after another; tallies belong to no game. */
  readonly archiveRows: ReadonlyMap<string, readonly ArrayLike<number>[]>;
  readonly trees: Readonly<Record<ChainKind, ChainTree>>;
  /** Places of the levels of the line's tree among all that a line's chain may have. */
  readonly linePlaces: readonly number[];
  /** How many snaps each row stands for; null where every row is one snap. */
  readonly snapWeights: Float64Array | null;
  /** The class codes of a target on all snaps as they were charted. */
  readonly chartedCodesOf: CodesOf;
  /** The same, without the answers of the opponent's games that do not tell their passes apart. */
  readonly codesOf: CodesOf;
}

/** Class codes of a target. */
export type CodesOf = (definition: TargetDefinition) => TargetCodes;

/**
 * Reads two charts for the forecast.
 *
 * @param chart - the opponent's snaps
 * @param archive - snaps of other offenses, or null
 */
export function forecastFilm(chart: Film, archive: Film | null, cuts: SituationCuts): ForecastFilm {
  const own = snapCells(chart, cuts);
  const cells = archive === null ? own : joinCells(own, snapCells(archive, cuts));
  const ownGames = offenseGames(chart);
  const archiveGames = archive === null ? [] : offenseGames(archive).map((game) => moved(game, chart.size));
  const chartedCodesOf = codesOnce(({ classes, codes }) => ({
    classes: classes.length,
    codes: archive === null ? codes(chart, cuts) : joinCodes(codes(chart, cuts), codes(archive, cuts)),
  }));
  return {
    cells,
    ownSize: chart.size,
    ownGames,
    archiveGames,
    archiveRows: rowsByOffense(archiveGames),
    ...filmTrees(cells, chart.size),
    snapWeights: null,
    chartedCodesOf,
    codesOf: codesOnce((definition) => {
      const charted = chartedCodesOf(definition);
      if (definition.target !== 'answer') return charted;
      const { codes } = chartedCodesOf(RUN_OR_PASS);
      return { ...charted, codes: classifiedAnswers(charted.codes, codes, ownGames) };
    }),
  };
}

/** The snaps of each offense, game by game. */
export function rowsByOffense(games: readonly OffenseGame[]): ReadonlyMap<string, readonly ArrayLike<number>[]> {
  const byOffense = groupBy(games, ({ offense }) => offense);
  return new Map([...byOffense].map(([offense, own]) => [offense, own.map(({ rows }) => rows)]));
}

/** Works out the codes of a target when they are first asked for: every chain and every tell of it asks again. */
function codesOnce(codesOf: CodesOf): CodesOf {
  const known = new Map<TargetDefinition, TargetCodes>();
  return (definition) => {
    const found = known.get(definition) ?? codesOf(definition);
    known.set(definition, found);
    return found;
  };
}

/**
 * The cells of both chains. A level of the line that was charted on fewer than half as many own snaps as a deeper one is left
 * out: where only the empty set is told from the rest, most looks are blank, and what was charted is no sample of them.
 *
 * @param ownSize - how many of the snaps, the first ones, are those of the film to be forecast
 */
export function filmTrees(cells: SnapCells, ownSize: number): Pick<ForecastFilm, 'trees' | 'linePlaces'> {
  const levels = lineLevels(cells);
  const charted = levels.map((level) => chartedOn(level, ownSize));
  const linePlaces = [...levels.keys()].filter(
    (place) => 2 * (charted[place] as number) >= Math.max(0, ...charted.slice(place + 1)),
  );
  const line = linePlaces.map((place) => levels[place] as Uint8Array);
  return { trees: { plan: chainTree(planLevels(cells), cells.size), line: chainTree(line, cells.size) }, linePlaces };
}

function chartedOn(level: Uint8Array, size: number): number {
  let charted = 0;
  for (let i = 0; i < size; i++) if (level[i] !== NOT_KNOWN) charted++;
  return charted;
}

/** One chain of one target, fitted, with the tallies it was fitted to. */
export interface FittedTarget {
  readonly definition: TargetDefinition;
  readonly tree: ChainTree;
  readonly own: ChainTally;
  readonly fit: ChainFit;
  /** The archive's tally as it was fitted; null without an archive on which the target was charted. */
  readonly archive: ChainArchive | null;
  /** The archive's own chain, which stands behind every fit with it; null without an archive. */
  readonly base: ChainFit | null;
  readonly target: TargetCodes;
  /** Games of other offenses on which the target was charted. */
  readonly archiveGames: number;
}

/** Fits one chain of a target to the film; each once, for every chapter asks again. */
export function fitTarget(film: ForecastFilm, definition: TargetDefinition, kind: ChainKind): FittedTarget {
  return FITS(film, `${kind} ${definition.target}`, () => fitKind(film, definition, kind));
}

function fitKind(film: ForecastFilm, definition: TargetDefinition, kind: ChainKind): FittedTarget {
  const { target } = definition;
  const strengths = kind === 'plan' ? TARGET_STRENGTHS[target].plan : lineStrengths(target, film.linePlaces);
  const cells = { tree: film.trees[kind], strengths };
  const fitted = fitTargetOn(film, definition, cells);
  if (definition.runs === undefined) return fitted;
  // Runs are classified where passes are not: they say which run, and the few passes classified say which pass.
  const hidden = hidesPasses(film.chartedCodesOf(definition), film.chartedCodesOf(RUN_OR_PASS), definition);
  const charted = hidden ? fitTargetOn({ ...film, codesOf: film.chartedCodesOf }, definition, cells).fit : fitted.fit;
  const { shares } = splitByRunOrPass(charted, fitTarget(film, RUN_OR_PASS, kind).fit, definition);
  return { ...fitted, fit: { ...fitted.fit, shares } };
}

const FITS = keptByFilm<FittedTarget>();
const LEAGUES = keptByFilm<LeagueWorth>();

/** What belongs to a film and a key, made when it is first asked for. */
function keptByFilm<Value>(): (film: ForecastFilm, key: string, make: () => Value) => Value {
  const all = new WeakMap<ForecastFilm, Map<string, Value>>();
  return (film, key, make) => {
    const known = all.get(film) ?? new Map<string, Value>();
    all.set(film, known);
    const value = known.get(key) ?? make();
    known.set(key, value);
    return value;
  };
}

/** Fits a target to the film over cells of one's own choosing. */
export function fitTargetOn(
  film: ForecastFilm,
  definition: TargetDefinition,
  { tree, strengths }: Pick<ChainData, 'tree' | 'strengths'>,
): FittedTarget {
  const target = film.codesOf(definition);
  const own = tallyGames(
    tree,
    target,
    film.ownGames.map(({ rows }) => rows),
  );
  const { archive, games: archiveGames } = archiveOf(film, definition, tree);
  const base = archive && archiveFit({ tree, archive, strengths });
  return {
    definition,
    tree,
    own,
    fit: fitChain({ tree, own, archive, strengths, ...(base && { base }) }),
    archive,
    base,
    target,
    archiveGames,
  };
}

/** The archive in the cells of a tree; how much it is worth is the same for all trees, and is worked out once. */
function archiveOf(film: ForecastFilm, definition: TargetDefinition, tree: ChainTree) {
  const target = film.codesOf(definition);
  const games = film.archiveGames.filter(({ rows }) => rows.some((row) => target.codes[row] !== NOT_KNOWN));
  if (games.length === 0) return { archive: null, games: 0 };
  const { gameToGame } = TARGET_STRENGTHS[definition.target].plan;
  const worth = LEAGUES(film, definition.target, () => {
    const snaps = { target, situation: film.cells.situation, games, rowsOf: film.archiveRows };
    return leagueWorth(countLeague(snaps), { classes: target.classes, gameToGame });
  });
  const offenses = new Set(games.map(({ offense }) => offense)).size;
  const archive: ChainArchive = { tally: tallyGame(tree, target, archiveRows(film)), offenses, worth };
  return { archive, games: games.length };
}

function archiveRows({ cells, ownSize }: ForecastFilm): Int32Array {
  const rows = new Int32Array(cells.size - ownSize);
  for (let i = 0; i < rows.length; i++) rows[i] = ownSize + i;
  return rows;
}

function moved(game: OffenseGame, by: number): OffenseGame {
  return { ...game, rows: game.rows.map((row) => row + by) };
}
