import type { ColumnFacts } from './column-facts.ts';

/** Columns that move as down, distance and gain do from one snap to the next. */
export interface Chain {
  readonly down: ColumnFacts;
  readonly toGo: ColumnFacts;
  readonly gain: ColumnFacts;
  /** Steps from one down to the next in the sheet, and those where the distance falls by the gain. */
  readonly steps: number;
  readonly followed: number;
}

/** Fewer steps than this say nothing; judgment. */
const FEWEST_STEPS = 4;

/** The share of steps that must follow; judgment: penalties, series that changed hands and slips break some. */
const FOLLOWED = 0.5;

/**
 * The three columns of whole numbers that move like down, distance and gain: when the first rises by one, the second
 * falls by the third. Undefined when no three do.
 */
export function findChain(columns: readonly ColumnFacts[]): Chain | undefined {
  const whole = columns.filter(({ wholeShare }) => wholeShare >= 0.9);
  const distances = whole.filter((one) => isWithin(one, 0, 99));
  const gains = whole.filter((one) => one.part === undefined && isWithin(one, -99, 99) && one.counts.size >= 5);
  const best = whole
    .filter(isLikeDown)
    .flatMap((down) => chainsOf(down, distances, gains))
    .reduce((left: Chain | undefined, right) => (isBetter(right, left) ? right : left), undefined);
  return best && best.followed >= FOLLOWED * best.steps ? best : undefined;
}

function chainsOf(down: ColumnFacts, distances: readonly ColumnFacts[], gains: readonly ColumnFacts[]): Chain[] {
  const steps = downSteps(down);
  if (steps.length < FEWEST_STEPS) return [];
  const others = distances.filter((toGo) => toGo !== down);
  return others.flatMap((toGo) =>
    gains
      .filter((gain) => gain !== down && gain !== toGo)
      .map((gain) => ({ down, toGo, gain, steps: steps.length, followed: followedSteps(steps, toGo, gain) })),
  );
}

/** Of the steps where the down rises by one, how many a ball position (yards to the goal line) follows, 0 to 1. */
export function ballMoves({ down, toGo }: Pick<Chain, 'down' | 'toGo'>, yards: Float64Array): number {
  const moves = downSteps(down).map((i) => ({
    ball: at(yards, i) - at(yards, i + 1),
    needed: at(toGo.numbers, i) - at(toGo.numbers, i + 1),
  }));
  // A blank on either row says nothing of the step between them.
  const charted = moves.filter(({ ball, needed }) => !Number.isNaN(ball + needed));
  return charted.length < FEWEST_STEPS
    ? 0
    : charted.filter(({ ball, needed }) => ball === needed).length / charted.length;
}

/** Whether a column holds 1 to 4 and little else, each next down at least once. */
export function isLikeDown({ numbers, filled, counts }: ColumnFacts): boolean {
  if (filled === 0 || counts.size < 3 || counts.size > 8) return false;
  let sound = 0;
  for (const value of numbers) if (value >= 1 && value <= 4) sound++;
  return sound >= 0.95 * filled;
}

/** Rows followed by a row with the next down. */
function downSteps({ numbers }: ColumnFacts): number[] {
  const steps: number[] = [];
  for (let i = 0; i + 1 < numbers.length; i++)
    if (at(numbers, i) < 4 && at(numbers, i + 1) === at(numbers, i) + 1) steps.push(i);
  return steps;
}

function followedSteps(steps: readonly number[], toGo: ColumnFacts, gain: ColumnFacts): number {
  let followed = 0;
  for (const i of steps) if (at(toGo.numbers, i) - at(gain.numbers, i) === at(toGo.numbers, i + 1)) followed++;
  return followed;
}

/**
 * More steps followed; of equals the one with fewer steps, then the one with 10 to go more often (yards to the goal line
 * fall by the gain as well), then the one with numbers in cells of their own, then by header, so that order does not
 * matter.
 */
function isBetter(chain: Chain, best: Chain | undefined): boolean {
  if (best === undefined) return chain.followed > 0;
  if (chain.followed !== best.followed) return chain.followed > best.followed;
  if (chain.steps !== best.steps) return chain.steps < best.steps;
  if (tens(chain) !== tens(best)) return tens(chain) > tens(best);
  if (partsOf(chain) !== partsOf(best)) return partsOf(chain) < partsOf(best);
  return nameOf(chain) < nameOf(best);
}

function tens({ toGo }: Chain): number {
  return toGo.counts.get('10') ?? 0;
}

function partsOf({ down, toGo }: Chain): number {
  return [down, toGo].filter(({ part }) => part !== undefined).length;
}

function nameOf({ down, toGo, gain }: Chain): string {
  return [down, toGo, gain].map(({ header }) => header).join('\n');
}

function isWithin({ numbers, filled }: ColumnFacts, least: number, most: number): boolean {
  let inside = 0;
  for (const value of numbers) if (value >= least && value <= most) inside++;
  return inside >= 0.95 * filled;
}

function at(numbers: Float64Array, index: number): number {
  return numbers[index] ?? Number.NaN;
}
