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
  const dual = { problem, set, names: numbersOf(problem) };
  const solved = solveNudged({ maximize: dualObjective(dual), constraints: dualConstraints(dual) });
  if (solved?.status !== 'optimal') return null;
  const { names } = dual;
  const read = (name: number) => Math.max(0, solved.solution.get(name) ?? 0);
  const { situations, answers, candidates } = problem;
  const weights = Float64Array.from({ length: situations.length * answers }, (_, i) => read(names.answer + i));
  const pairs = new Float64Array(names.use - names.pair);
  for (const c of set) pairs[pairOf(problem, c)] = read(names.pair + pairOf(problem, c));
  const use = new Float64Array(candidates.length);
  for (const c of set) use[c] = read(names.use + c);
  return { answers: completed(weights, answers), pairs, use, explosives: read(names.risk) };
}

/** The dual program of a set. */
interface Dual {
  readonly problem: MenuProblem;
  readonly set: readonly number[];
  readonly names: DualNames;
}

/** Its variables go by numbers; each kind by these and the following ones. */
interface DualNames {
  /** By situation: what a snap is worth there at least. */
  readonly best: number;
  /** By situation: price of the least pressure. */
  readonly least: number;
  /** By `situation * answers + answer`. */
  readonly answer: number;
  readonly pair: number;
  /** By candidate. */
  readonly use: number;
  readonly risk: number;
}

function numbersOf({ situations, answers, candidates }: MenuProblem): DualNames {
  const least = situations.length;
  const answer = least + situations.length;
  const pair = answer + situations.length * answers;
  const use = pair + 1 + candidates.reduce((last, candidate) => Math.max(last, candidate.pair), -1);
  return { best: 0, least, answer, pair, use, risk: use + candidates.length };
}

function pairOf(problem: MenuProblem, c: number): number {
  return (problem.candidates[c] as MenuCandidate).pair;
}

function dualObjective({ problem, set, names }: Dual): Map<number, number> {
  const { situations, limits, baseExplosives } = problem;
  const terms = new Map<number, number>();
  situations.forEach(({ expectedSnaps }, s) => {
    terms.set(names.best + s, -expectedSnaps * limits.mostPressure);
    if (limits.leastPressure > 0) terms.set(names.least + s, expectedSnaps * limits.leastPressure);
  });
  for (const c of set) terms.set(names.use + c, limits.leastCalls);
  if (limits.pairingCap < 1) {
    for (const c of set) terms.set(names.pair + pairOf(problem, c), -pairRoom(problem, c));
  }
  if (limits.explosives !== null) terms.set(names.risk, baseExplosives - limits.explosives);
  return terms;
}

function dualConstraints(dual: Dual): LinearConstraint<number>[] {
  const { problem, set, names } = dual;
  const { situations, answers, limits } = problem;
  const covered = situations.flatMap((_, s) => set.map((c) => coveredConstraint(dual, { c, s })));
  const weights = situations.map((_, s) => ({
    terms: Array.from({ length: answers - 1 }, (__, a) => [names.answer + s * answers + a, 1] as const),
    max: 1,
  }));
  const bounded = [...set.map((c) => names.use + c), ...(limits.explosives === null ? [] : [names.risk])];
  const bounds = bounded.map((name) => ({ terms: [[name, 1] as const], max: PROHIBITIVE }));
  return [...covered, ...(usesAnswers(problem) ? weights : []), ...bounds];
}

/** What a situation is worth is at least what each carried call is worth there at these prices. */
function coveredConstraint(
  { problem, set, names }: Dual,
  { c, s }: { readonly c: number; readonly s: number },
): LinearConstraint<number> {
  const { situations, limits } = problem;
  const at = c * situations.length + s;
  const terms: [number, number][] = [
    [names.best + s, 1],
    [names.use + c, -1],
  ];
  if (limits.leastPressure > 0) terms.push([names.least + s, -1]);
  if (limits.explosives !== null) terms.push([names.risk, problem.extraExplosives[at] as number]);
  const last = usesAnswers(problem)
    ? addAnswerTerms(terms, problem, { at, from: names.answer + s * problem.answers })
    : 0;
  if (limits.pairingCap < 1) addPairTerms(terms, { problem, set, names }, c);
  return { terms, min: limits.trust * (problem.value[at] as number) + last };
}

/**
 * Adds the answers' terms; the last answer takes what the others leave of the weights, so it needs no variable.
 *
 * @returns what the last answer adds to the bound
 */
function addAnswerTerms(
  terms: [number, number][],
  { answers, limits, byAnswer }: MenuProblem,
  { at, from }: { readonly at: number; readonly from: number },
): number {
  const last = byAnswer[at * answers + answers - 1] as number;
  for (let a = 0; a < answers - 1; a++) {
    terms.push([from + a, (1 - limits.trust) * (last - (byAnswer[at * answers + a] as number))]);
  }
  return (1 - limits.trust) * last;
}

function addPairTerms(terms: [number, number][], { problem, set, names }: Dual, c: number): void {
  const { candidates, limits } = problem;
  const own = pairOf(problem, c);
  const ofPath = set.filter((d) => candidates[d]?.path === candidates[c]?.path).map((d) => pairOf(problem, d));
  for (const pair of new Set(ofPath)) {
    terms.push([names.pair + pair, (pair === own ? 1 : 0) - (limits.pairMost[pair] as number)]);
  }
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
