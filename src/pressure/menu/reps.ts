import type { Call } from '../../game/call-library.ts';
import type { MenuCandidate } from './model.ts';

/**
 * Parts of a call's reps that teach its path and its coverage; each is practiced once for all carried calls that share
 * it, at the costliest of them. The rest is the call's own. Judgment: half of a rep teaches nothing new when path and
 * coverage are known apart, how they fit must still be seen.
 */
export const SHARED_REPS = { path: 0.3, coverage: 0.2 } as const;

/** What one call adds to the reps by itself. */
export const OWN_REPS = 1 - SHARED_REPS.path - SHARED_REPS.coverage;

/** Practice reps of a call this week: to install it, or to keep it. */
export function repsThisWeek(call: Call): number {
  return call.installed ? call.reps.weekly : call.reps.first;
}

/**
 * Practice reps of each carried call: what it has in common with others is booked on the costliest of them, the earlier
 * one at a tie.
 */
export function repsOfCalls(carried: readonly Pick<MenuCandidate, 'call' | 'reps'>[]): number[] {
  return carried.map((member, i) => {
    const pays = (key: 'path' | 'coverage') =>
      carried.every((other, j) => other.call[key] !== member.call[key] || paysBefore(member.reps - other.reps, j - i));
    const shared = (pays('path') ? SHARED_REPS.path : 0) + (pays('coverage') ? SHARED_REPS.coverage : 0);
    return (OWN_REPS + shared) * member.reps;
  });
}

/** Practice reps of carried calls, paths and coverages shared. */
export function repsOfSet(carried: readonly Pick<MenuCandidate, 'call' | 'reps'>[]): number {
  return repsOfCalls(carried).reduce((sum, reps) => sum + reps, 0);
}

function paysBefore(dearer: number, later: number): boolean {
  return dearer > 0 || (dearer === 0 && later >= 0);
}
