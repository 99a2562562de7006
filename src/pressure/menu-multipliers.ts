import type { LinearConstraint } from '../stats/mixed-program.ts';
import type { MenuMultipliers } from './menu-ceiling.ts';
import { LEAST_CALLS, type MenuCandidate, type MenuProblem } from './menu-model.ts';
import { solveNudged } from './menu-solve.ts';

/** A price so high that no sound plan pays it: a set that must is one that cannot keep its limits. Judgement. */
export const PROHIBITIVE = 1e4;

/**
 * The prices under which a set of calls is worth what its best mix is worth: the dual of the program that mixes them.
 * Candidates outside the set get no price here.
 *
 * @returns null when the solver found no answer
 */
export function multipliersOf(problem: MenuProblem, set: readonly number[]): MenuMultipliers | null {
  const solved = solveNudged({ maximize: dualObjective(problem, set), constraints: dualConstraints(problem, set) });
  if (solved?.status !== 'optimal') return null;
  const read = (name: string) => Math.max(0, solved.solution.get(name) ?? 0);
  const { situations, answers, candidates } = problem;
  const weights = Float64Array.from({ length: situations.length * answers }, (_, i) =>
    read(answerName(Math.floor(i / answers), i % answers)),
  );
  const pairs = new Float64Array(1 + Math.max(...candidates.map(({ pair }) => pair)));
  for (const c of set) pairs[pairOf(problem, c)] = read(pairName(pairOf(problem, c)));
  const use = new Float64Array(candidates.length);
  for (const c of set) use[c] = read(useName(c));
  return { answers: summingToOne(weights, answers), pairs, use, explosives: read(RISK) };
}

const RISK = 'risk';
const bestName = (s: number) => `best${s}`;
const leastName = (s: number) => `least${s}`;
const answerName = (s: number, a: number) => `answer${s}_${a}`;
const pairName = (pair: number) => `pair${pair}`;
const useName = (c: number) => `use${c}`;

function pairOf(problem: MenuProblem, c: number): number {
  return (problem.candidates[c] as MenuCandidate).pair;
}

function dualObjective(problem: MenuProblem, set: readonly number[]): Map<string, number> {
  const { situations, limits, baseExplosives } = problem;
  const terms = new Map<string, number>();
  situations.forEach(({ expectedSnaps }, s) => {
    terms.set(bestName(s), -expectedSnaps * limits.mostPressure);
    if (limits.leastPressure > 0) terms.set(leastName(s), expectedSnaps * limits.leastPressure);
  });
  for (const c of set) terms.set(useName(c), LEAST_CALLS);
  if (limits.explosives !== null) terms.set(RISK, baseExplosives - limits.explosives);
  return terms;
}

function dualConstraints(problem: MenuProblem, set: readonly number[]): LinearConstraint[] {
  const { situations, answers, limits } = problem;
  const covered = situations.flatMap((_, s) => set.map((c) => coveredConstraint(problem, set, { c, s })));
  const weights = situations.map((_, s) => ({
    terms: new Map(Array.from({ length: answers }, (__, a) => [answerName(s, a), 1])),
    equal: 1,
  }));
  const bounded = [...set.map(useName), ...(limits.explosives === null ? [] : [RISK])];
  const bounds = bounded.map((name) => ({ terms: { [name]: 1 }, max: PROHIBITIVE }));
  return [...covered, ...(usesAnswers(problem) ? weights : []), ...bounds];
}

/** What a situation is worth is at least what each carried call is worth there at these prices. */
function coveredConstraint(
  problem: MenuProblem,
  set: readonly number[],
  { c, s }: { readonly c: number; readonly s: number },
): LinearConstraint {
  const { situations, answers, limits, candidates } = problem;
  const at = c * situations.length + s;
  const terms = new Map<string, number>([
    [bestName(s), 1],
    [useName(c), -1],
  ]);
  if (limits.leastPressure > 0) terms.set(leastName(s), -1);
  if (usesAnswers(problem)) {
    for (let a = 0; a < answers; a++) {
      terms.set(answerName(s, a), -(1 - limits.trust) * (problem.byAnswer[at * answers + a] as number));
    }
  }
  if (limits.explosives !== null) terms.set(RISK, problem.extraExplosives[at] as number);
  if (limits.pairingCap < 1) {
    for (const other of set.filter((d) => candidates[d]?.path === candidates[c]?.path)) {
      const pair = pairOf(problem, other);
      terms.set(pairName(pair), (pair === pairOf(problem, c) ? 1 : 0) - limits.pairingCap);
    }
  }
  return { terms, min: limits.trust * (problem.value[at] as number) };
}

function usesAnswers({ limits, answers }: MenuProblem): boolean {
  return limits.trust < 1 && answers > 0;
}

/** Weights scaled so that they sum to exactly 1 in every situation; equal weights where there were none. */
function summingToOne(weights: Float64Array, answers: number): Float64Array {
  for (let start = 0; start < weights.length; start += answers) {
    const total = weights.subarray(start, start + answers).reduce((sum, weight) => sum + weight, 0);
    for (let a = 0; a < answers; a++) {
      weights[start + a] = total > 0 ? (weights[start + a] as number) / total : 1 / answers;
    }
  }
  return weights;
}
