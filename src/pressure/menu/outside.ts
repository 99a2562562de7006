import { type MenuMultipliers, pairRoom, snapWorth } from './ceiling.ts';
import type { MenuCandidate, MenuProblem } from './model.ts';
import { solveNudged } from './solve.ts';

/**
 * Prices of a set, completed for the candidates outside it so that the ceiling they put on other sets is low: each
 * path that is not in the set gets the pairing prices under which it would add least, and each candidate outside the
 * price of having to call it. Any prices are valid; these are merely good.
 */
export function priceOutside(problem: MenuProblem, set: readonly number[], prices: MenuMultipliers): MenuMultipliers {
  const best = bestWorth(problem, set, snapWorth(problem, prices));
  const pairs = pricePaths(problem, set, { prices, best });
  return { ...prices, pairs, use: priceUse(problem, set, { prices: { ...prices, pairs }, best }) };
}

/** Prices of a set and, by situation, the worth of a snap there under them. */
interface Priced {
  readonly prices: MenuMultipliers;
  readonly best: Float64Array;
}

/** Worth of a situation's snap to the best carried call, or to the base. */
function bestWorth(problem: MenuProblem, set: readonly number[], worth: Float64Array): Float64Array {
  const count = problem.situations.length;
  const base = problem.limits.leastPressure > 0 ? Number.NEGATIVE_INFINITY : 0;
  return Float64Array.from({ length: count }, (_, s) =>
    set.reduce((most, c) => Math.max(most, worth[c * count + s] as number), base),
  );
}

function pricePaths(problem: MenuProblem, set: readonly number[], { prices, best }: Priced): Float64Array {
  const pairs = Float64Array.from(prices.pairs);
  if (problem.limits.pairingCap >= 1) return pairs;
  const carried = new Set(set.map((c) => problem.candidates[c]?.path));
  const worth = snapWorth(problem, prices);
  for (const members of membersByPath(problem)) {
    const path = problem.candidates[members[0] as number]?.path;
    if (carried.has(path) || !addsSomething(problem, members, { worth, best })) continue;
    for (const [pair, price] of pathPrices(problem, members, { worth, best })) pairs[pair] = price;
  }
  return pairs;
}

function membersByPath({ candidates }: MenuProblem): number[][] {
  const groups = new Map<number, number[]>();
  candidates.forEach(({ path }, c) => {
    const group = groups.get(path) ?? [];
    group.push(c);
    groups.set(path, group);
  });
  return [...groups.values()];
}

interface Worth {
  readonly worth: Float64Array;
  readonly best: Float64Array;
}

function addsSomething(problem: MenuProblem, members: readonly number[], { worth, best }: Worth): boolean {
  const count = problem.situations.length;
  return members.some((c) => best.some((most, s) => (worth[c * count + s] as number) > most + 1e-9));
}

/**
 * The pairing prices under which a path adds least to what the set is worth, by a small linear program. Its variables go
 * by numbers: what is added in each situation, then the pairs.
 */
function pathPrices(problem: MenuProblem, members: readonly number[], { worth, best }: Worth): Map<number, number> {
  const { situations, candidates, limits } = problem;
  const count = situations.length;
  const pairOf = (c: number) => (candidates[c] as MenuCandidate).pair;
  const pairs = [...new Set(members.map(pairOf))];
  const constraints = members.flatMap((c) => {
    const shares = pairs.map((pair) => {
      return [count + pair, (pair === pairOf(c) ? 1 : 0) - (limits.pairMost[pair] as number)] as const;
    });
    return situations.map((_, s) => ({
      terms: [[s, 1] as const, ...shares],
      min: (worth[c * count + s] as number) - (best[s] as number),
    }));
  });
  const maximize = new Map(situations.map(({ expectedSnaps }, s) => [s, -expectedSnaps]));
  for (const c of members) maximize.set(count + pairOf(c), -pairRoom(problem, c));
  const solved = solveNudged({ maximize, constraints });
  if (solved?.status !== 'optimal') return new Map();
  return new Map(pairs.map((pair) => [pair, Math.max(0, solved.solution.get(count + pair) ?? 0)]));
}

/** A candidate outside is charged what it loses, where it loses least, on the calls it must have. */
function priceUse(problem: MenuProblem, set: readonly number[], { prices, best }: Priced): Float64Array {
  const count = problem.situations.length;
  const carried = new Set(set);
  const worth = snapWorth(problem, prices);
  return prices.use.map((price, c) => {
    if (carried.has(c)) return price;
    const losses = Array.from(best, (most, s) => most - (worth[c * count + s] as number));
    return Number.isFinite(losses[0]) ? Math.max(0, Math.min(...losses)) : 0;
  });
}
