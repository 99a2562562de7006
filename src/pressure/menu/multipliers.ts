import type { LinearConstraint } from '../../stats/mixed-program.ts';
import { type MenuMultipliers, pairRoom } from './ceiling.ts';
import type { MenuCandidate, MenuProblem } from './model.ts';
import { solveNudged } from './solve.ts';

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
  const pairs = new Float64Array(1 + Math.max(-1, ...candidates.map(({ pair }) => pair)));
  for (const c of set) pairs[pairOf(problem, c)] = read(pairName(pairOf(problem, c)));
  const use = new Float64Array(candidates.length);
  for (const c of set) use[c] = read(useName(c));
  return { answers: completed(weights, answers), pairs, use, explosives: read(RISK) };
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
  for (const c of set) terms.set(useName(c), limits.leastCalls);
  if (limits.pairingCap < 1) {
    for (const c of set) terms.set(pairName(pairOf(problem, c)), -pairRoom(problem, c));
  }
  if (limits.explosives !== null) terms.set(RISK, baseExplosives - limits.explosives);
  return terms;
}

function dualConstraints(problem: MenuProblem, set: readonly number[]): LinearConstraint[] {
  const { situations, answers, limits } = problem;
  const covered = situations.flatMap((_, s) => set.map((c) => coveredConstraint(problem, set, { c, s })));
  const weights = situations.map((_, s) => ({
    terms: new Map(Array.from({ length: answers - 1 }, (__, a) => [answerName(s, a), 1])),
    max: 1,
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
  const { situations, limits } = problem;
  const at = c * situations.length + s;
  const terms = new Map<string, number>([
    [bestName(s), 1],
    [useName(c), -1],
    ...(limits.leastPressure > 0 ? [[leastName(s), -1] as const] : []),
    ...(limits.explosives === null ? [] : [[RISK, problem.extraExplosives[at] as number] as const]),
    ...answerTerms(problem, at, s),
    ...pairTerms(problem, set, c),
  ]);
  const last = usesAnswers(problem) ? (1 - limits.trust) * lastAnswer(problem, at) : 0;
  return { terms, min: limits.trust * (problem.value[at] as number) + last };
}

function answerTerms(problem: MenuProblem, at: number, s: number): (readonly [string, number])[] {
  const { answers, limits, byAnswer } = problem;
  if (!usesAnswers(problem)) return [];
  const last = lastAnswer(problem, at);
  return Array.from({ length: answers - 1 }, (_, a) => [
    answerName(s, a),
    (1 - limits.trust) * (last - (byAnswer[at * answers + a] as number)),
  ]);
}

/** The last answer takes what the others leave of the weights, so it needs no variable. */
function lastAnswer({ answers, byAnswer }: MenuProblem, at: number): number {
  return byAnswer[at * answers + answers - 1] as number;
}

function pairTerms(problem: MenuProblem, set: readonly number[], c: number): (readonly [string, number])[] {
  const { candidates, limits } = problem;
  if (limits.pairingCap >= 1) return [];
  const neighbours = set.filter((d) => candidates[d]?.path === candidates[c]?.path).map((d) => pairOf(problem, d));
  return neighbours.map((pair) => {
    return [pairName(pair), (pair === pairOf(problem, c) ? 1 : 0) - (limits.pairMost[pair] as number)];
  });
}

function usesAnswers({ limits, answers }: MenuProblem): boolean {
  return limits.trust < 1 && answers > 0;
}

/** The weights with the last answer's filled in; scaled so that they sum to 1 should rounding have made them more. */
function completed(weights: Float64Array, answers: number): Float64Array {
  return weights.map((weight, i) => {
    const start = i - (i % answers);
    const total = weights.subarray(start, start + answers - 1).reduce((sum, other) => sum + other, 0);
    if (i === start + answers - 1) return Math.max(0, 1 - total);
    return total > 1 ? weight / total : weight;
  });
}
