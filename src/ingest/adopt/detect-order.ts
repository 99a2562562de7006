import { readClock } from '../read-clock.ts';
import { type ColumnFacts, isInside, shareWhere } from './column-facts.ts';
import type { Detectors, Evidence, SheetContext } from './evidence.ts';
import { climbs, fallingShare, isInRuns, runsOf, stepShare } from './game-runs.ts';
import { headerLikeness, headerTokens, phraseLikeness } from './trade-words.ts';

/** Columns that say where in the season and the game a snap is. */
export const ORDER_DETECTORS: Detectors = {
  game: detectGame,
  week: detectWeek,
  snap: detectSnap,
  drive: detectDrive,
  quarter: detectQuarter,
  clock: detectClock,
  score_margin: detectMargin,
};

/** A game has at least so many snaps of an offense, on average; judgment. */
const SNAPS_IN_GAME = 8;

function detectGame(facts: ColumnFacts, { gameStarts }: SheetContext): Evidence | undefined {
  if (facts.part !== undefined || facts.filled < 0.5 * facts.cells.length) return undefined;
  if (!isInRuns(facts, SNAPS_IN_GAME)) return undefined;
  // A whole column of one value may be anything.
  if (facts.counts.size === 1) return { score: facts.numberShare < 0.5 ? 0.15 : 0.02, why: 'is the same on every row' };
  if (spansGames(facts, gameStarts)) return { score: 0.1, why: 'stays the same over several games' };
  const score = (gameStarts.size > 0 ? 0.85 : 0.6) - (facts.numberShare < 0.5 ? 0 : 0.35) - facts.dateShare / 10;
  return { score, why: 'stays the same for a game and then never comes back' };
}

function spansGames(facts: ColumnFacts, gameStarts: ReadonlySet<number>): boolean {
  const { starts } = runsOf(facts);
  return [...gameStarts].filter((start) => starts.has(start)).length < 0.7 * gameStarts.size;
}

function detectWeek(facts: ColumnFacts): Evidence | undefined {
  if (facts.wholeShare < 0.97 || !isInside(facts, 0, 60) || !isInRuns(facts, SNAPS_IN_GAME)) return undefined;
  if (facts.counts.size === 1) return { score: 0.1, why: 'is the same number on every row' };
  const rising = stepShare(facts.numbers, new Set(), (before, after) => after >= before) === 1;
  return { score: rising ? 0.6 : 0.35, why: 'is a small number that stays for a game' };
}

function detectSnap(facts: ColumnFacts, { gameStarts }: SheetContext): Evidence | undefined {
  if (facts.wholeShare < 0.97 || facts.counts.size < 5 || !isInside(facts, 1, 9999)) return undefined;
  const byFall = gameStarts.size > 0 ? gameStarts : fallsOf(facts);
  if (byFall.size > facts.cells.length / SNAPS_IN_GAME) return undefined;
  if (stepShare(facts.numbers, byFall, (before, after) => after > before) < 0.98) return undefined;
  const byOne = stepShare(facts.numbers, byFall, (before, after) => after === before + 1);
  return { score: byOne > 0.6 ? 0.85 : 0.6, why: 'rises with every row' };
}

function detectDrive(facts: ColumnFacts, { chain, quarter }: SheetContext): Evidence | undefined {
  if (facts === quarter || facts.wholeShare < 0.97 || !isInside(facts, 1, 60)) return undefined;
  const { ofChanges } = climbs(facts);
  const rises = risesOf(facts);
  if (ofChanges < 0.9 || rises.length < 3 || rises.length > 0.5 * facts.cells.length) return undefined;
  const first = chain ? rises.filter((i) => chain.down.numbers[i] === 1).length / rises.length : 0.5;
  return first < 0.5 ? undefined : { score: 0.3 + 0.5 * first, why: 'climbs by one, mostly on a first down' };
}

function detectQuarter(facts: ColumnFacts, { quarter }: SheetContext): Evidence | undefined {
  if (facts === quarter) return { score: 0.85, why: 'climbs from 1 to 4 and starts again' };
  const small = facts.wholeShare >= 0.97 && isInside(facts, 1, 9) && climbs(facts).share >= 0.97;
  return small ? { score: 0.2, why: 'is a small number that climbs' } : undefined;
}

function detectClock(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  if (facts.joined !== undefined) return joinedClock(facts, context);
  const { gameStarts, quarter } = context;
  const clocks = shareWhere(facts, (text) => readClock(text).kind === 'value');
  if (clocks >= 0.95) return { score: 0.9, why: 'is written as minutes and seconds' };
  const seconds = facts.wholeShare >= 0.97 && isInside(facts, 0, 900) && facts.counts.size >= 15;
  if (!seconds || quarter === undefined) return undefined;
  const starts = new Set([...gameStarts, ...runsOf(quarter).starts]);
  if (fallingShare(facts.numbers, starts) < 0.95) return undefined;
  return { score: 0.6, why: 'is a number of seconds that falls within a quarter', as: 'seconds' };
}

/** Minutes and seconds of two columns fall within a quarter; without quarters their headers must say so. */
function joinedClock(facts: ColumnFacts, { columns, gameStarts, quarter }: SheetContext): Evidence | undefined {
  const why = 'is minutes, and seconds beside them';
  const seconds = columns.find(({ index, part }) => index === facts.joined?.index && part === undefined);
  const said =
    phraseLikeness(facts.header, 'minutes') >= 0.75 && phraseLikeness(seconds?.header ?? '', 'seconds') >= 0.75;
  const clocks = facts.cells.map((cell) => readClock(cell));
  const left = Float64Array.from(clocks, (clock) => (clock.kind === 'value' ? Number(clock.value) : Number.NaN));
  const starts = new Set([...gameStarts, ...(quarter === undefined ? [] : runsOf(quarter).starts)]);
  const falls = quarter !== undefined && fallingShare(left, starts) >= 0.95;
  if (falls) return { score: 0.92, why: `${why}, that fall within a quarter` };
  return said ? { score: 0.85, why } : undefined;
}

function detectMargin(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  if (facts.joined !== undefined) return joinedMargin(facts, context);
  if (facts.wholeShare < 0.97 || !isInside(facts, -99, 99) || facts.counts.size < 3) return undefined;
  const steady = stepShare(facts.numbers, new Set(), (before, after) => Math.abs(before) === Math.abs(after));
  const jumps = stepShare(
    facts.numbers,
    new Set(),
    (before, after) => Math.abs(Math.abs(after) - Math.abs(before)) <= 8,
  );
  const signed = [...facts.numbers].some((value) => value < 0);
  if (steady < 0.7 || !facts.counts.has('0')) return undefined;
  const score = jumps >= 0.95 && signed ? 0.75 : 0.15;
  return { score, why: 'stays level and moves in scores', ...marginSign(facts, context) };
}

/** After the offense gains all it needs and six to eight points, its margin rises; where it falls, it is the defense's. */
function marginSign(facts: ColumnFacts, context: SheetContext): Pick<Evidence, 'as' | 'open'> {
  const changes = changesAfterGains(facts, context);
  const up = changes.filter((change) => change >= 6 && change <= 8).length;
  const down = changes.filter((change) => change <= -6 && change >= -8).length;
  if (down > 2 * up && down >= 2) return { as: 'minus' };
  if (up > 2 * down && up >= 2) return { as: 'plus' };
  return { as: 'plus', open: 'whether a plus means that the offense leads' };
}

/** Two scores: the offense's rises when it has gained all it needed, or its header names the team. */
function joinedMargin(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  const { as, open } = marginSign(facts, context);
  if (as === 'minus') return undefined;
  const other = context.columns.find(({ index, part }) => index === facts.joined?.index && part === undefined);
  const why = 'is two scores of which the first rises with the gains';
  if (open === undefined) return { score: 0.9, why };
  const [first, second] = [sideOfScore(facts.header), sideOfScore(other?.header ?? '')];
  if (first === second) {
    const twice = (facts.joined?.index ?? 0) < facts.index;
    return twice ? undefined : { score: 0.55, why: 'is two scores', as: 'plus', open: 'which team has which score' };
  }
  const offenseFirst = first === 'offense' || second === 'defense';
  return offenseFirst ? { score: 0.85, why: 'is the score of the offense, and that of the defense' } : undefined;
}

/** The team a header names for a score; undefined when it names none. */
function sideOfScore(header: string): 'offense' | 'defense' | undefined {
  const says = (words: readonly string[]) => headerTokens(header).some((token) => words.includes(token));
  if (says(['off', 'offense', 'offence', 'for'])) return 'offense';
  return says(['def', 'defense', 'defence', 'against', 'allowed']) ? 'defense' : undefined;
}

/** How the margin changes until the same offense's next snap, after each snap that gained all it needed. */
function changesAfterGains({ numbers }: ColumnFacts, { chain, columns, gameStarts }: SheetContext): number[] {
  if (chain === undefined) return [];
  const offense = columns.find(
    ({ header, numberShare }) => numberShare < 0.3 && headerLikeness(header, 'offense') >= 0.75,
  );
  const { gain, toGo } = chain;
  const rows = [...gain.numbers.keys()].filter((i) => (gain.numbers[i] ?? 0) >= (toGo.numbers[i] ?? Number.NaN));
  return rows.map((i) => (numbers[nextOfSame(offense, i, gameStarts)] ?? Number.NaN) - (numbers[i] ?? Number.NaN));
}

/** The next row of the same offense in the same game; -1 when there is none. Without offenses it is the next row. */
function nextOfSame(offense: ColumnFacts | undefined, row: number, gameStarts: ReadonlySet<number>): number {
  if (offense === undefined) return gameStarts.has(row + 1) ? -1 : row + 1;
  for (let i = row + 1; i < offense.cells.length && !gameStarts.has(i); i++) {
    if (offense.cells[i] === offense.cells[row]) return i;
  }
  return -1;
}

function risesOf({ numbers }: ColumnFacts): number[] {
  const rises: number[] = [];
  for (let i = 1; i < numbers.length; i++) if ((numbers[i] ?? 0) > (numbers[i - 1] ?? Number.NaN)) rises.push(i);
  return rises;
}

function fallsOf({ numbers }: ColumnFacts): ReadonlySet<number> {
  const falls = new Set<number>();
  for (let i = 1; i < numbers.length; i++) if ((numbers[i] ?? 0) < (numbers[i - 1] ?? Number.NaN)) falls.add(i);
  return falls;
}
