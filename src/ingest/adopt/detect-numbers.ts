import { readFieldPosition } from '../read-field-position.ts';
import { personnelCounts } from '../read-shape.ts';
import { splitYardLine } from '../yard-line-side.ts';
import { type ColumnFacts, isInside, shareWhere } from './column-facts.ts';
import type { Detectors, Evidence, SheetContext } from './evidence.ts';
import { climbs } from './game-runs.ts';
import { isPassOnly } from './sheet-context.ts';
import { ballMoves, isLikeDown } from './snap-chain.ts';

/** Columns that say down, distance, place, people and yards. */
export const NUMBER_DETECTORS: Detectors = {
  down: detectDown,
  to_go: detectDistance,
  gain: detectGain,
  ball_on: detectBall,
  personnel: detectPersonnel,
  receivers: detectReceivers,
  protectors: detectProtectors,
  backs_released: detectBacksReleased,
  rushers_faced: detectRushers,
  time_to_throw: detectTime,
  target_depth: detectDepth,
};

const MOVES = 'moves with its neighbours as down, distance and gain do from snap to snap';

function detectDown(facts: ColumnFacts, { chain }: SheetContext): Evidence | undefined {
  if (chain?.down === facts) return chainEvidence(facts);
  if (!isLikeDown(facts)) return undefined;
  const often = (down: number) => facts.numbers.filter((value) => value === down).length;
  const falling = often(1) >= often(2) && often(2) >= often(3) && often(3) >= often(4);
  if (chain || climbs(facts).share >= 0.9) return { score: 0.05, why: 'is a number from 1 to 4' };
  return { score: falling ? 0.6 : 0.4, why: 'is a number from 1 to 4 that starts again and again' };
}

function detectDistance(facts: ColumnFacts, { chain }: SheetContext): Evidence | undefined {
  if (chain?.toGo === facts) return chainEvidence(facts);
  if (facts.wholeShare < 0.9 || !isInside(facts, 0, 99)) return undefined;
  const tens = facts.numbers.filter((value) => value === 10).length / Math.max(1, facts.filled);
  if (chain || tens < 0.15) return { score: 0.03, why: 'is a whole number' };
  return { score: 0.3 + 0.5 * Math.min(tens, 0.5), why: 'is most often 10' };
}

function detectGain(facts: ColumnFacts, { chain }: SheetContext): Evidence | undefined {
  if (chain?.gain === facts) return chainEvidence(facts);
  if (facts.part !== undefined || facts.wholeShare < 0.9 || !isInside(facts, -99, 99)) return undefined;
  const losses = facts.numbers.some((value) => value < 0);
  if (chain || !losses || facts.counts.size < 5) return { score: 0.03, why: 'is a whole number' };
  const small = facts.numbers.filter((value) => value >= -10 && value <= 15).length / Math.max(1, facts.filled);
  return { score: small >= 0.85 ? 0.4 : 0.1, why: 'is a small whole number, at times below 0' };
}

function chainEvidence({ part }: ColumnFacts): Evidence {
  return part === undefined ? { score: 0.97, why: MOVES } : { score: 0.97, why: MOVES, as: part };
}

/** How sure a ball position is that moves as the distance does; one that only looks like it is not. */
const BALL_SEEN = 0.4;

function detectBall(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  const { chain } = context;
  if (facts.part !== undefined || [chain?.down, chain?.toGo, chain?.gain].includes(facts)) return undefined;
  const readings = ballReadings(facts).map((reading) => ({ ...reading, moves: ballMovesIn(context, reading.yards) }));
  readings.sort((left, right) => right.moves - left.moves || right.score - left.score);
  const best = readings[0];
  if (best === undefined) return undefined;
  const { yards: _, moves, score, ...reading } = best;
  if (moves >= BALL_SEEN) return { ...reading, score: 0.5 + moves / 2, why: 'moves by the yards gained' };
  const open =
    reading.as === undefined && reading.sides === undefined ? {} : { open: 'which side of the field it counts from' };
  return { ...reading, ...open, score, why: 'could be a yard line' };
}

interface BallReading extends Pick<Evidence, 'as' | 'sides'> {
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
  const bySign: BallReading = { as: 'signed_yard_line', yards: decode((_, value) => signed(value)), score: 0.2 };
  const written: BallReading = { yards: decode(writtenYards), score: 0.9 };
  const both = facts.numbers.some((value) => value < 0) && facts.numbers.some((value) => value > 0);
  const numbers = both ? [bySign] : [toGoal, fromOwn];
  return [written, ...numbers, ...sideReadings(facts)].filter(({ yards }) => {
    const read = yards.filter((value) => !Number.isNaN(value));
    return new Set(read).size >= 4 && read.length >= 0.95 * facts.filled;
  });
}

function writtenYards(text: string): number {
  const reading = readFieldPosition(text);
  return reading.kind === 'value' ? Number(reading.value) : Number.NaN;
}

/** One reading for each word before a yard line, taken as the offense's own side. */
function sideReadings(facts: ColumnFacts): BallReading[] {
  const words = new Set([...facts.counts.keys()].flatMap((text) => splitYardLine(text)?.word ?? []));
  if (words.size < 2 || words.size > 12) return [];
  return [...words].sort().map((own): BallReading => {
    const sides = Object.fromEntries([...words].map((word) => [word, word === own ? 'own' : 'opp'] as const));
    const yards = Float64Array.from(facts.cells, (cell) => {
      const split = splitYardLine(cell);
      if (split === undefined) return cell === '50' ? 50 : Number.NaN;
      return split.word === own ? 100 - split.line : split.line;
    });
    return { sides, yards, score: 0.6 };
  });
}

/** Without a gain the chain may be unknown; then down and distance are looked for by their looks. */
function ballMovesIn({ chain, columns }: SheetContext, yards: Float64Array): number {
  if (chain) return ballMoves(chain, yards);
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

function detectPersonnel(facts: ColumnFacts): Evidence | undefined {
  if (facts.part !== undefined || facts.counts.size < 2) return undefined;
  const codes = shareWhere(facts, (text) => isPersonnel(text));
  const usual = shareWhere(facts, (text) => ['10', '11', '12', '20', '21', '22'].includes(text));
  if (codes < 0.95) return undefined;
  const onlyTens = facts.counts.size === 2 && facts.counts.has('10') && usual < 0.9;
  return { score: usual >= 0.5 && !onlyTens ? 0.85 : 0.2, why: 'holds two digits that count backs and tight ends' };
}

/** Two digits of at most five players together; a spreadsheet drops a zero in front. */
function isPersonnel(text: string): boolean {
  const counts = personnelCounts(text);
  return counts !== undefined && counts.backs <= 4 && counts.backs + counts.tightEnds <= 5;
}

function detectReceivers(facts: ColumnFacts): Evidence | undefined {
  const shapes = shareWhere(facts, (text) => /^[0-5]\s*[x\u00d7]\s*[0-5]$/i.test(text));
  return shapes >= 0.9 ? { score: 0.95, why: 'is written as 2x2 or 3x1' } : undefined;
}

function detectProtectors(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  if (facts.wholeShare < 0.97 || !isInside(facts, 4, 10)) return undefined;
  const usual = ['5', '6', '7'].includes(modeOf(facts)) && facts.counts.size >= 2;
  const score = usual && isPassOnly(facts, context) ? 0.4 : 0.1;
  return { score, why: 'is a number around 5 to 7' };
}

function detectBacksReleased(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  if (facts.wholeShare < 0.97 || !isInside(facts, 0, 3) || facts.counts.size < 2) return undefined;
  return { score: isPassOnly(facts, context) ? 0.2 : 0.03, why: 'is a number from 0 to 3' };
}

function detectRushers(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  if (facts.part !== undefined || facts.wholeShare < 0.97 || !isInside(facts, 0, 11)) return undefined;
  const usual = facts.numbers.filter((value) => value >= 3 && value <= 7).length / Math.max(1, facts.filled);
  if (modeOf(facts) !== '4' || usual < 0.85 || facts.counts.size < 2) return { score: 0.02, why: 'is a small number' };
  const several = facts.counts.has('5');
  return { score: isPassOnly(facts, context) ? 0.75 : several ? 0.5 : 0.1, why: 'is most often 4, then 5 or 3' };
}

function detectTime(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  if (facts.numberShare < 0.97 || !isInside(facts, 0.3, 15)) return undefined;
  const broken = facts.numberShare - facts.wholeShare;
  const mean = facts.numbers.reduce((sum, value) => sum + (value || 0), 0) / Math.max(1, facts.filled);
  if (broken < 0.4 || mean < 1 || mean > 5) return undefined;
  return { score: isPassOnly(facts, context) ? 0.9 : 0.8, why: 'is a time of two or three seconds, with decimals' };
}

function detectDepth(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  if (facts === context.chain?.gain || facts.wholeShare < 0.9 || !isInside(facts, -20, 80)) return undefined;
  if (facts.counts.size < 8) return undefined;
  const score = isPassOnly(facts, context) && Number(modeOf(facts)) < 15 ? 0.65 : 0.05;
  return { score, why: 'is a number of yards, charted on passes only' };
}

function modeOf({ counts }: ColumnFacts): string {
  return [...counts].sort((left, right) => right[1] - left[1] || (left[0] < right[0] ? -1 : 1))[0]?.[0] ?? '';
}
