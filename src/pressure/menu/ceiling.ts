import type { MenuCandidate, MenuProblem } from './model.ts';

/**
 * Prices of the limits that tie situations or answers together. Any prices of at least 0 give a ceiling on what every
 * set of calls is worth; the ones that solve the program of a set give that set's worth itself.
 */
export interface MenuMultipliers {
  /** Weight of each answer, at `situation * answers + answer`; a situation's weights sum to 1. */
  readonly answers: Float64Array;
  /** By pair of path and coverage: price of one more call of it beyond the cap. */
  readonly pairs: Float64Array;
  /** By candidate: price of having to call it at least so often. */
  readonly use: Float64Array;
  /** Price of one explosive play. */
  readonly explosives: number;
}

/** What any set of calls is worth at most, in points a game. */
export interface MenuCeiling {
  /** Worth of giving a situation's snaps to a candidate, at `candidate * situations + situation`. */
  readonly worth: Float64Array;
  /** Paid once by each carried candidate; 0 or less. */
  readonly fixed: Float64Array;
  /** Allowed once for each carried pair, by pair: its price times the calls of it that are not counted. */
  readonly ofPair: Float64Array;
  /** Pair of each candidate. */
  readonly pairs: Int32Array;
  /** What a situation is worth when no carried call is worth more. */
  readonly floor: Float64Array;
  readonly constant: number;
}

/**
 * The ceiling that given prices put on every set of calls: each situation takes the best of its carried calls, or the
 * base. It is never below what a set is really worth (weak duality), whatever the prices.
 *
 * @see Geoffrion 1974, Mathematical Programming Study 2:82, Lagrangean relaxation
 */
export function ceilingOf(problem: MenuProblem, prices: MenuMultipliers): MenuCeiling {
  const { situations, candidates, limits } = problem;
  const count = situations.length;
  const worth = snapWorth(problem, prices);
  candidates.forEach((_, c) => {
    situations.forEach(({ expectedSnaps }, s) => {
      const at = c * count + s;
      const each = worth[at] as number;
      worth[at] = expectedSnaps * each * (each >= 0 ? limits.mostPressure : limits.leastPressure);
    });
  });
  const room = limits.explosives === null ? 0 : limits.explosives - problem.baseExplosives;
  return {
    worth,
    fixed: prices.use.map((price) => -limits.leastCalls * price),
    ofPair: pairAllowances(problem, prices.pairs),
    pairs: Int32Array.from(candidates, ({ pair }) => pair),
    floor: floors(problem, worth),
    constant: prices.explosives * room,
  };
}

/** What the ceiling says of one set. */
export function setCeiling(ceiling: MenuCeiling, set: readonly number[]): number {
  const { worth, fixed, floor, constant } = ceiling;
  const count = floor.length;
  let total = constant + pairAllowance(ceiling, set);
  for (let i = 0; i < set.length; i++) total += fixed[set[i] as number] as number;
  for (let s = 0; s < count; s++) {
    let most = floor[s] as number;
    for (let i = 0; i < set.length; i++) {
      const here = worth[(set[i] as number) * count + s] as number;
      if (here > most) most = here;
    }
    total += most;
  }
  return total;
}

/** What the uncounted calls of a set's pairs are worth under a ceiling's prices. */
export function pairAllowance({ ofPair, pairs }: MenuCeiling, set: readonly number[]): number {
  let total = 0;
  for (let i = 0; i < set.length; i++) {
    const pair = pairs[set[i] as number] as number;
    const allowed = ofPair[pair] as number;
    if (allowed !== 0 && !set.slice(0, i).some((c) => pairs[c] === pair)) total += allowed;
  }
  return total;
}

/** Calls a game by which a candidate's pair may exceed its share of the path: its part of the uncounted ones. */
export function pairRoom({ candidates, limits }: MenuProblem, c: number): number {
  const { pair, path } = candidates[c] as MenuCandidate;
  return (1 - (limits.pairMost[pair] as number)) * (limits.uncounted[path] as number);
}

/** The lowest of several ceilings on a set; stops early, with a number not above `enough`, once it is there. */
export function lowestCeiling(ceilings: readonly MenuCeiling[], set: readonly number[], enough: number): number {
  let lowest = Number.POSITIVE_INFINITY;
  for (const ceiling of ceilings) {
    lowest = Math.min(lowest, setCeiling(ceiling, set));
    if (lowest <= enough) return lowest;
  }
  return lowest;
}

/**
 * Worth of one snap of each candidate in each situation at given prices, in points.
 *
 * @returns at `candidate * situations + situation`
 */
export function snapWorth(problem: MenuProblem, prices: MenuMultipliers): Float64Array {
  const { situations, limits, value, extraExplosives } = problem;
  const count = situations.length;
  const pairCharge = pairCharges(problem, prices.pairs);
  const worth = againstAnswers(problem, prices.answers);
  for (let c = 0; c < problem.candidates.length; c++) {
    const each = (prices.use[c] as number) - (pairCharge[c] as number);
    for (let at = c * count; at < (c + 1) * count; at++) {
      const risk = prices.explosives * (extraExplosives[at] as number);
      const against = worth[at] as number;
      worth[at] = limits.trust * (value[at] as number) + (1 - limits.trust) * against + each - risk;
    }
  }
  return worth;
}

/** Points saved a snap against the answers as they are weighted, at `candidate * situations + situation`. */
function againstAnswers({ situations, answers, value, byAnswer }: MenuProblem, weights: Float64Array): Float64Array {
  const each = situations.length * answers;
  const against = new Float64Array(value.length);
  for (let at = 0; at < against.length; at++) {
    const from = (at * answers) % each;
    let sum = 0;
    for (let a = 0; a < answers; a++) sum += (weights[from + a] as number) * (byAnswer[at * answers + a] as number);
    against[at] = sum;
  }
  return against;
}

function pairAllowances(problem: MenuProblem, pairs: Float64Array): Float64Array {
  const allowed = new Float64Array(pairs.length);
  problem.candidates.forEach(({ pair }, c) => {
    allowed[pair] = (pairs[pair] as number) * pairRoom(problem, c);
  });
  return allowed;
}

/** What a call of each candidate is charged for its path's pairing limits: its own pair's price less the limits' part. */
function pairCharges(problem: MenuProblem, pairs: Float64Array): number[] {
  if (problem.limits.pairingCap >= 1) return problem.candidates.map(() => 0);
  const seen = new Set<number>();
  const ofPath = new Map<number, number>();
  for (const { path, pair } of problem.candidates) {
    if (seen.has(pair)) continue;
    seen.add(pair);
    const part = (problem.limits.pairMost[pair] as number) * (pairs[pair] as number);
    ofPath.set(path, (ofPath.get(path) ?? 0) + part);
  }
  return problem.candidates.map(({ path, pair }: MenuCandidate) => (pairs[pair] as number) - (ofPath.get(path) ?? 0));
}

/** The base is always there, unless some pressure must be sent: then the worst candidate is the floor. */
function floors(problem: MenuProblem, worth: Float64Array): Float64Array {
  const count = problem.situations.length;
  if (problem.limits.leastPressure === 0) return new Float64Array(count);
  return Float64Array.from({ length: count }, (_, s) =>
    problem.candidates.reduce((least, __, c) => Math.min(least, worth[c * count + s] as number), 0),
  );
}
