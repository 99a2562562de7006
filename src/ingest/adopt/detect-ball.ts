import { readFieldPosition } from '../read-field-position.ts';
import { PAIR_DATES, type PairDates } from '../read-pair.ts';
import { halfMarked } from '../translate-cell.ts';
import { splitYardLine } from '../yard-line-side.ts';
import { type ColumnFacts, isInside, shareWhere } from './column-facts.ts';
import type { Evidence, SheetContext } from './evidence.ts';
import { climbs } from './game-runs.ts';
import { ballMoves, isLikeDown } from './snap-chain.ts';
import { headerLikeness } from './trade-words.ts';

/** How sure a ball position is that moves as the distance does; one that only looks like it is not. */
const BALL_SEEN = 0.4;

/** A reading that is wrong for one half of the field, or for one of two offenses, moves on half of the steps; judgment. */
const MOVES_WELL = 0.75;

/** What the values of a column, or of a yard line with its side, say for their being the ball position. */
export function detectBall(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  if (facts.part !== undefined || isInChain(facts, context) || isFolded(facts, context)) return undefined;
  const readings = ballReadings(facts).map((reading) => ({ ...reading, moves: ballMovesIn(context, reading.yards) }));
  readings.sort((left, right) => right.moves - left.moves || right.score - left.score);
  const best = readings[0];
  if (best === undefined) return undefined;
  const { yards: _, moves, score, ...reading } = best;
  const written = reading.as === undefined && reading.sides === undefined;
  const seen = written ? BALL_SEEN : MOVES_WELL;
  if (moves >= seen) return { ...reading, score: 0.5 + moves / 2, why: 'moves by the yards gained' };
  // A yard line beside any other words is no ball position, and with two offenses no team's side is always the own.
  if (reading.sides !== undefined || (facts.joined !== undefined && !written)) return undefined;
  const open = written ? {} : { open: 'which side of the field it counts from' };
  return { ...reading, ...open, score: Math.max(score, moves), why: 'could be a yard line' };
}

function isInChain(facts: ColumnFacts, { chain }: SheetContext): boolean {
  return chain !== undefined && [chain.down, chain.toGo, chain.gain].includes(facts);
}

/** So many rows do not all lie in one half of the field; judgment. */
const BOTH_HALVES = 30;

/**
 * Whether a column counts from 1 to 50 on both sides of the field and does not say on which: it moves with the gains in
 * part as yards to the one goal line and in part as yards to the other, or nothing tells and it never exceeds 50.
 */
export function isFolded(facts: ColumnFacts, context: SheetContext): boolean {
  if (facts.part !== undefined || facts.joined !== undefined || !isInside(facts, 1, 50)) return false;
  if (facts.wholeShare < 0.95 || facts.counts.size < 8) return false;
  const down = ballMovesIn(context, facts.numbers);
  const up = ballMovesIn(
    context,
    facts.numbers.map((line) => 100 - line),
  );
  if (down + up >= BALL_SEEN) return Math.min(down, up) >= 0.1;
  return facts.filled >= BOTH_HALVES && headerLikeness(facts.header, 'ball_on') >= 0.75;
}

interface BallReading extends Pick<Evidence, 'as' | 'sides' | 'dates'> {
  readonly yards: Float64Array;
  readonly score: number;
}

/** The ways in which nearly all cells of a column can be read as ball positions. */
function ballReadings(facts: ColumnFacts): BallReading[] {
  const decode = (toYards: (text: string, value: number) => number) =>
    Float64Array.from(facts.cells, (cell, i) =>
      cell === '' ? Number.NaN : toYards(cell, facts.numbers[i] ?? Number.NaN),
    );
  const within = (value: number, most: number) =>
    Number.isInteger(value) && value >= 1 && value <= most ? value : Number.NaN;
  const signed = (value: number) => (value < 0 ? within(100 + value, 99) : within(value, 50));
  const toGoal: BallReading = { as: 'yards_to_goal', yards: decode((_, value) => within(value, 99)), score: 0.3 };
  const fromOwn: BallReading = {
    as: 'yards_from_own_goal',
    yards: decode((_, value) => within(100 - value, 99)),
    score: 0.25,
  };
  const bySign: BallReading = { as: 'minus_is_own', yards: decode((_, value) => signed(value)), score: 0.2 };
  const written: BallReading = { yards: decode(writtenYards), score: 0.9 };
  const both = facts.numbers.some((value) => value < 0) && facts.numbers.some((value) => value > 0);
  const numbers = both ? [bySign] : [toGoal, fromOwn];
  const bare = (marked: 'own' | 'opp') => decode((text) => halfMarked(text, marked));
  // A side that was not charted beside the line is a blank of one row; the rest still tells.
  const least = facts.joined === undefined ? 0.95 : 0.7;
  const marked = markedSides(facts);
  const half: BallReading[] = [
    { as: 'bare_is_opp' as const, yards: bare('own'), score: 0.35, marks: 'own' },
    { as: 'bare_is_own' as const, yards: bare('opp'), score: 0.3, marks: 'opp' },
  ].flatMap(({ marks, ...reading }) => (marks === marked ? [reading] : []));
  return [written, ...(half.length > 0 ? half : numbers), ...sideReadings(facts)].filter(({ yards }) => {
    const read = yards.filter((value) => !Number.isNaN(value));
    return new Set(read).size >= 4 && read.length >= least * facts.filled;
  });
}

/**
 * The only side of the field that cells mark, in words or by a sign, while others are bare numbers; undefined when both
 * sides are marked, for then a bare number says nothing.
 */
function markedSides(facts: ColumnFacts): 'own' | 'opp' | undefined {
  const bare = shareWhere(facts, (text) => /^\d{1,2}$/.test(text) && text !== '50');
  const own = shareWhere(facts, (text) => isMarked(text) && writtenYards(text) > 50);
  const opp = shareWhere(facts, (text) => isMarked(text) && writtenYards(text) < 50);
  if (bare === 0 || bare + own + opp < 0.9 || own > 0 === opp > 0) return undefined;
  return own > 0 ? 'own' : 'opp';
}

function isMarked(text: string): boolean {
  return !/^-?\d+$/.test(text) && !Number.isNaN(writtenYards(text));
}

function writtenYards(text: string): number {
  const reading = readFieldPosition(text);
  return reading.kind === 'value' ? Number(reading.value) : Number.NaN;
}

/** One reading for each word before a yard line, taken as the offense's own side. */
function sideReadings(facts: ColumnFacts): BallReading[] {
  const orders = facts.dateShare > 0 ? PAIR_DATES : PAIR_DATES.slice(0, 1);
  return orders.flatMap((dates) => sideReadingsOf(facts, dates));
}

function sideReadingsOf(facts: ColumnFacts, dates: PairDates): BallReading[] {
  const words = new Set([...facts.counts.keys()].flatMap((text) => splitYardLine(text, dates)?.word ?? []));
  if (words.size < 2 || words.size > 12) return [];
  return [...words].sort().map((own): BallReading => {
    const sides = Object.fromEntries([...words].map((word) => [word, word === own ? 'own' : 'opp'] as const));
    const yards = Float64Array.from(facts.cells, (cell) => {
      const split = splitYardLine(cell, dates);
      if (split === undefined) return cell === '50' ? 50 : Number.NaN;
      return split.word === own ? 100 - split.line : split.line;
    });
    return { sides, yards, score: 0.6, ...(dates === 'plain' ? {} : { dates }) };
  });
}

/** Without a gain the chain may be unknown; then down and distance are looked for by their looks. */
function ballMovesIn({ chain, columns }: SheetContext, yards: Float64Array): number {
  if (chain) return sameNumbers(chain.toGo, yards) ? 0 : ballMoves(chain, yards);
  const downs = columns.filter((one) => isLikeDown(one) && climbs(one).share < 0.9);
  const distances = columns.filter((one) => one.wholeShare >= 0.9 && isInside(one, 0, 99));
  const shares = downs.flatMap((down) =>
    distances
      .filter((toGo) => toGo !== down && !sameNumbers(toGo, yards))
      .map((toGo) => ballMoves({ down, toGo }, yards)),
  );
  return Math.max(0, ...shares);
}

function sameNumbers({ numbers }: ColumnFacts, yards: Float64Array): boolean {
  return yards.every((value, i) => Number.isNaN(value) || value === numbers[i] || value === 100 - (numbers[i] ?? 0));
}
