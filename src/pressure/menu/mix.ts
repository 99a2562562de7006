import type { LinearConstraint } from '../../stats/mixed-program.ts';
import { mixNames } from './mix-names.ts';
import type { MenuCandidate, MenuProblem } from './model.ts';
import { ascending } from './set.ts';
import { solveNudged } from './solve.ts';

/** A set of calls and what menus are compared by. */
export interface RankedSet {
  /** Candidates carried, ascending. */
  readonly set: readonly number[];
  /** Points a game of its best mix: trust times forecast plus the rest times their worst answer for us. */
  readonly objective: number;
}

/** The best mix of a set of calls and what it is worth; `objective` is trust times `value` plus the rest times `worst`. */
export interface MenuMix extends RankedSet {
  /** Share of a situation's snaps given to the i-th carried candidate, at `i * situations + situation`. */
  readonly shares: Float64Array;
  /** Points saved a game by the forecast, and against the answer that hurts most in each situation. */
  readonly value: number;
  readonly worst: number;
}

/**
 * The mix of a set of calls that is worth most within the limits on the mix, by a linear program.
 *
 * @returns null when no mix keeps the limits
 */
export function bestMix(problem: MenuProblem, carried: readonly number[]): MenuMix | null {
  const set = ascending(carried);
  const shift = lowest(problem, set);
  const limits = mixConstraints(problem, set);
  const solved = solveNudged({
    maximize: mixObjective(problem, set),
    constraints: [...limits, ...worstConstraints(problem, set, shift)],
  });
  if (solved?.status !== 'optimal') return null;
  const { share } = mixNames(problem);
  const given = (name: number) => Math.max(0, solved.solution.get(name) ?? 0);
  if (!limits.every((limit) => keepsLimit(limit, given))) return null;
  const count = problem.situations.length;
  const shares = Float64Array.from({ length: set.length * count }, (_, at) =>
    given(share(set[Math.floor(at / count)] as number, at % count)),
  );
  return worthOfMix(problem, set, shares);
}

/** What a given mix of a set is worth. */
export function worthOfMix(problem: MenuProblem, set: readonly number[], shares: Float64Array): MenuMix {
  const { situations, limits } = problem;
  let [value, worst] = [0, 0];
  situations.forEach(({ expectedSnaps }, s) => {
    value += expectedSnaps * weighted(problem, { set, shares, s }, (at) => problem.value[at] as number);
    worst += expectedSnaps * Math.min(...worthByAnswer(problem, { set, shares, s }));
  });
  return { set, shares, value, worst, objective: limits.trust * value + (1 - limits.trust) * worst };
}

/** A mix in one situation. */
export interface MixAt {
  readonly set: readonly number[];
  readonly shares: Float64Array;
  readonly s: number;
}

/** Points a snap a mix saves in a situation against each answer; 0 against an answer nobody scored. */
export function worthByAnswer(problem: MenuProblem, mix: MixAt): number[] {
  const { answers } = problem;
  const worth = Array.from({ length: answers }, (_, a) =>
    weighted(problem, mix, (at) => problem.byAnswer[at * answers + a] as number),
  );
  return worth.length === 0 ? [0] : worth;
}

/** Sum over carried candidates of their share in a situation times a quantity. */
export function weighted(problem: MenuProblem, { set, shares, s }: MixAt, of: (at: number) => number): number {
  const count = problem.situations.length;
  return set.reduce((sum, c, i) => sum + (shares[i * count + s] as number) * of(c * count + s), 0);
}

/** Calls a game expected of the i-th carried candidate. */
export function expectedCalls(problem: MenuProblem, { shares }: Pick<MenuMix, 'shares'>, i: number): number {
  const { situations } = problem;
  return situations.reduce(
    (sum, { expectedSnaps }, s) => sum + expectedSnaps * (shares[i * situations.length + s] as number),
    0,
  );
}

/** Explosive plays a game expected under a mix. */
export function expectedExplosives(problem: MenuProblem, { set, shares }: Pick<MenuMix, 'set' | 'shares'>): number {
  return problem.situations.reduce(
    (sum, { expectedSnaps }, s) =>
      sum + expectedSnaps * weighted(problem, { set, shares, s }, (at) => problem.extraExplosives[at] as number),
    problem.baseExplosives,
  );
}

/** What a mix of a set is chosen by, as factors of its variables. */
export function mixObjective(problem: MenuProblem, set: readonly number[]): Map<number, number> {
  const { situations, limits } = problem;
  const { share, worst } = mixNames(problem);
  const terms = new Map<number, number>();
  situations.forEach(({ expectedSnaps }, s) => {
    if (limits.trust < 1) terms.set(worst(s), expectedSnaps * (1 - limits.trust));
    for (const c of set) {
      const value = problem.value[c * situations.length + s] as number;
      terms.set(share(c, s), expectedSnaps * limits.trust * value);
    }
  });
  return terms;
}

/** A limit on a mix. */
type MixLimit = LinearConstraint<number> & { readonly terms: readonly (readonly [number, number])[] };

function mixConstraints(problem: MenuProblem, set: readonly number[]): MixLimit[] {
  const { leastCalls } = problem.limits;
  const uses = set.map((c) => ({ terms: overSnaps(problem, [c], () => 1), min: leastCalls }));
  return [...mixLimits(problem, set), ...uses];
}

/** The limits on a mix, but for how often a carried call is called at least. */
export function mixLimits(problem: MenuProblem, set: readonly number[]): MixLimit[] {
  const { situations, limits } = problem;
  const { share } = mixNames(problem);
  const rates = situations.map((_, s) => ({
    terms: set.map((c) => [share(c, s), 1] as const),
    max: limits.mostPressure,
    ...(limits.leastPressure > 0 ? { min: limits.leastPressure } : {}),
  }));
  return [...rates, ...pairConstraints(problem, set), ...riskConstraints(problem, set)];
}

/** No pair of path and coverage takes more than its share of its path's calls beyond the uncounted ones. */
function pairConstraints(problem: MenuProblem, set: readonly number[]): MixLimit[] {
  const { pairingCap, pairMost, uncounted } = problem.limits;
  if (pairingCap >= 1) return [];
  const of = (c: number) => problem.candidates[c] as MenuCandidate;
  const firsts = set.filter((c, i) => set.findIndex((d) => of(d).pair === of(c).pair) === i);
  return firsts.map((first) => {
    const path = set.filter((c) => of(c).path === of(first).path);
    const most = pairMost[of(first).pair] as number;
    return {
      terms: overSnaps(problem, path, (at) => (pairOfAt(problem, at) === of(first).pair ? 1 : 0) - most),
      max: (1 - most) * (uncounted[of(first).path] as number),
    };
  });
}

function riskConstraints(problem: MenuProblem, set: readonly number[]): MixLimit[] {
  const { explosives } = problem.limits;
  if (explosives === null) return [];
  const terms = overSnaps(problem, set, (at) => problem.extraExplosives[at] as number);
  return [{ terms, max: explosives - problem.baseExplosives }];
}

/** Every situation's worst answer lies at or below what the mix is worth against each answer, less the floor. */
export function worstConstraints(problem: MenuProblem, set: readonly number[], shift: number): MixLimit[] {
  const { situations, answers, limits } = problem;
  if (limits.trust === 1) return [];
  const { share, worst } = mixNames(problem);
  return situations.flatMap((_, s) =>
    Array.from({ length: answers }, (__, a) => {
      const terms: [number, number][] = [[worst(s), 1]];
      for (const c of set) {
        const at = c * situations.length + s;
        terms.push([share(c, s), -(problem.byAnswer[at * answers + a] as number)]);
      }
      return { terms, max: -shift };
    }),
  );
}

/** A floor under the worst answer, so that the program's variables stay at or above 0. */
export function lowest(problem: MenuProblem, set: readonly number[]): number {
  const { situations, answers } = problem;
  const each = situations.length * answers;
  return set.reduce((least, c) => Math.min(least, ...problem.byAnswer.subarray(c * each, (c + 1) * each)), 0);
}

function overSnaps(problem: MenuProblem, list: readonly number[], of: (at: number) => number): [number, number][] {
  const { share } = mixNames(problem);
  return problem.situations.flatMap(({ expectedSnaps }, s) =>
    list.map((c): [number, number] => [share(c, s), expectedSnaps * of(c * problem.situations.length + s)]),
  );
}

function pairOfAt(problem: MenuProblem, at: number): number {
  return (problem.candidates[Math.floor(at / problem.situations.length)] as MenuCandidate).pair;
}

/** The solver works with rounded numbers; a mix is taken only when it keeps every limit to this. */
const MIX_SLACK = 1e-6;

function keepsLimit({ terms, min, max }: MixLimit, given: (name: number) => number): boolean {
  let total = 0;
  for (const [name, factor] of terms) total += factor * given(name);
  return (
    total >= (min ?? Number.NEGATIVE_INFINITY) - MIX_SLACK && total <= (max ?? Number.POSITIVE_INFINITY) + MIX_SLACK
  );
}
