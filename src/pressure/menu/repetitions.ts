import type { Call } from '../../game/call-library.ts';
import type { MenuCandidate, MenuProblem } from './model.ts';

/**
 * Parts of a call's repetitions that teach its path and its coverage; each is practised once for all carried calls that
 * share it, at the dearest of them. The rest is the call's own. Judgement: half of a repetition teaches nothing new
 * when path and coverage are known apart, the fit of both must still be seen.
 */
export const SHARED_REPS = { path: 0.3, coverage: 0.2 } as const;

/** What one call adds to the repetitions by itself, for its path and for its coverage. */
export interface RepParts {
  readonly own: number;
  readonly path: number;
  readonly coverage: number;
}

/** Practice repetitions of a call this week: to install it, or to keep it. */
export function repsThisWeek(call: Call): number {
  return call.installed ? call.reps.weekly : call.reps.first;
}

/** A call's repetitions in their three parts. */
export function repParts(reps: number): RepParts {
  const { path, coverage } = SHARED_REPS;
  return { own: (1 - path - coverage) * reps, path: path * reps, coverage: coverage * reps };
}

/** Practice repetitions of a set of candidates, paths and coverages shared. */
export function repsOfSet(problem: MenuProblem, set: readonly number[]): number {
  return repsOfCalls(problem, set).reduce((sum, reps) => sum + reps, 0);
}

/**
 * Practice repetitions of each call of a set: what it has in common with others is booked on the dearest of them, the
 * earlier one at a tie.
 *
 * @returns one number per entry of `set`, in its order
 */
export function repsOfCalls(problem: MenuProblem, set: readonly number[]): number[] {
  const members = set.map((c) => problem.candidates[c] as MenuCandidate);
  return members.map((member, i) => {
    const parts = repParts(member.reps);
    const pays = (key: 'path' | 'coverage') =>
      members.every((other, j) => other[key] !== member[key] || paysBefore(member.reps - other.reps, j - i));
    return parts.own + (pays('path') ? parts.path : 0) + (pays('coverage') ? parts.coverage : 0);
  });
}

function paysBefore(dearer: number, later: number): boolean {
  return dearer > 0 || (dearer === 0 && later >= 0);
}
