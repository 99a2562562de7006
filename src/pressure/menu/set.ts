import { groupByPath, holdsCalls, type MenuProblem } from './model.ts';
import { repsOfSet } from './repetitions.ts';

/** Repetitions are compared with this much slack, so that sums of fractions do not decide. */
export const REPS_SLACK = 1e-9;

/**
 * Whether a set of candidates keeps every limit that does not depend on the mix: size, repetitions, theories, musts,
 * and on each path calls that its pairs' limits have room for.
 */
export function isCarriable(problem: MenuProblem, set: readonly number[]): boolean {
  const { size, reps, theories, musts } = problem.limits;
  if (set.length > size || musts.some((c) => !set.includes(c))) return false;
  if (theories.some((theory) => !set.some((c) => problem.candidates[c]?.theory === theory))) return false;
  if (problem.limits.pairingCap < 1) {
    for (const ofPath of groupByPath(problem, set).values()) {
      if (!holdsCalls(problem, ofPath, ofPath.length * problem.limits.leastCalls)) return false;
    }
  }
  return repsOfSet(problem, set) <= reps + REPS_SLACK;
}

/** The set in ascending order, as one word; equal sets have equal words. */
export function setKey(set: readonly number[]): string {
  return ascending(set).join(' ');
}

/** The set in ascending order. */
export function ascending(set: readonly number[]): readonly number[] {
  return [...set].sort((a, b) => a - b);
}
