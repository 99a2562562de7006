import { readFigure } from '../read-figure.ts';
import { personnelCounts } from '../read-shape.ts';
import { type ColumnFacts, isInside, shareWhere } from './column-facts.ts';
import { detectBall } from './detect-ball.ts';
import type { Detectors, Evidence, SheetContext } from './evidence.ts';
import { climbs } from './game-runs.ts';
import { isPassOnly } from './sheet-context.ts';
import { isLikeDown } from './snap-chain.ts';
import { headerLikeness } from './trade-words.ts';

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

const MOVES = 'moves with its neighbors as down, distance and gain do from snap to snap';

const PAIRED = 'is one of two numbers, a down and a distance';

function detectDown(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  const { chain } = context;
  if (chain?.down === facts) return chainEvidence(facts);
  if (!isLikeDown(facts)) return undefined;
  if (chain === undefined && isSituation(facts, context)) return pairEvidence(facts);
  const often = (down: number) => facts.numbers.filter((value) => value === down).length;
  const falling = often(1) >= often(2) && often(2) >= often(3) && often(3) >= often(4);
  if (chain || climbs(facts).share >= 0.9) return { score: 0.05, why: 'is a number from 1 to 4' };
  return { score: falling ? 0.6 : 0.4, why: 'is a number from 1 to 4 that starts again and again' };
}

function detectDistance(facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  const { chain } = context;
  if (chain?.toGo === facts) return chainEvidence(facts);
  if (chain === undefined && isSituation(facts, context)) return pairEvidence(facts);
  if (facts.wholeShare < 0.9 || !isInside(facts, 0, 99)) return undefined;
  const tens = facts.numbers.filter((value) => value === 10).length / Math.max(1, facts.filled);
  if (chain || tens < 0.15) return { score: 0.03, why: 'is a whole number' };
  return { score: 0.3 + 0.5 * Math.min(tens, 0.5), why: 'is most often 10', ...(facts.part && { as: facts.part }) };
}

function detectGain(facts: ColumnFacts, { chain }: SheetContext): Evidence | undefined {
  if (chain?.gain === facts) return chainEvidence(facts);
  if (facts.part !== undefined || facts.wholeShare < 0.9 || !isInside(facts, -99, 99)) return undefined;
  const losses = facts.numbers.some((value) => value < 0);
  if (chain || !losses || facts.counts.size < 5) return { score: 0.03, why: 'is a whole number' };
  const small = facts.numbers.filter((value) => value >= -10 && value <= 15).length / Math.max(1, facts.filled);
  return { score: small >= 0.85 ? 0.4 : 0.1, why: 'is a small whole number, at times below 0' };
}

/** Whether a column is one half of pairs of which the first is a down and the second most often 10. */
function isSituation({ index, part }: ColumnFacts, { columns }: SheetContext): boolean {
  const half = (wanted: ColumnFacts['part']) => columns.find((one) => one.index === index && one.part === wanted);
  const [first, second] = [half('first_of_pair'), half('second_of_pair')];
  if (part === undefined || first === undefined || second === undefined || !isLikeDown(first)) return false;
  return isInside(second, 1, 99) && (second.counts.get('10') ?? 0) >= 0.15 * second.filled;
}

function pairEvidence({ part }: ColumnFacts): Evidence {
  return { score: 0.92, why: PAIRED, ...(part === undefined ? {} : { as: part }) };
}

function chainEvidence({ part }: ColumnFacts): Evidence {
  return part === undefined ? { score: 0.97, why: MOVES } : { score: 0.97, why: MOVES, as: part };
}

function detectPersonnel(facts: ColumnFacts): Evidence | undefined {
  if (facts.part !== undefined || facts.counts.size < 2) return undefined;
  const codes = shareWhere(facts, (text) => isPersonnel(text));
  const usual = shareWhere(facts, (text) => USUAL_PERSONNEL.includes(readFigure(text)));
  if (codes < 0.95) return namedPersonnel(facts);
  const onlyTens = facts.counts.size === 2 && facts.counts.has('10') && usual < 0.9;
  return { score: usual >= 0.5 && !onlyTens ? 0.85 : 0.2, why: 'holds two digits that count backs and tight ends' };
}

/** Backs and tight ends of most snaps; judgment. */
const USUAL_PERSONNEL = [10, 11, 12, 20, 21, 22];

/** A staff's own names, or two digits among them, under a header that says personnel. */
function namedPersonnel({ header, counts, filled }: ColumnFacts): Evidence | undefined {
  if (headerLikeness(header, 'personnel') < 0.75 || counts.size > 0.5 * filled) return undefined;
  return { score: 0.3, why: 'holds names that come again, under a header that says personnel' };
}

/** Two digits of at most five players together, with or without a word; a spreadsheet drops a zero in front. */
function isPersonnel(text: string): boolean {
  const figure = readFigure(text);
  const counts = personnelCounts(Number.isNaN(figure) ? text : String(figure).padStart(text.length > 1 ? 2 : 1, '0'));
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
