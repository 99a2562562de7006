import type { MenuProblem } from './weekly-menu-problem.ts';

/** Repetitions a set of carried calls costs, the shared path paid once. */
export function repsOf(problem: MenuProblem, carried: readonly number[]): number {
  const calls = carried.flatMap((c) => problem.candidates[c] ?? []).filter(({ call }) => call.family !== 'base');
  const own = calls.reduce((sum, { call }) => sum + (1 - PATH_SHARE) * costOf(call), 0);
  const paths = [...new Set(calls.map(({ call }) => call.path))];
  return own + paths.reduce((sum, path) => sum + PATH_SHARE * pathCost(problem, path), 0);
}

/** Part of a call's repetitions that is the path's: paid once, however many calls share it. Judgement. */
export const PATH_SHARE = 0.3;

/** Repetitions of a call this week: to keep it, or to install it. */
export function costOf(call: {
  readonly installed: boolean;
  readonly reps: { readonly first: number; readonly weekly: number };
}): number {
  return call.installed ? call.reps.weekly : call.reps.first;
}

/** The dearest call of a path: what the path's part is reckoned from. */
export function pathCost(problem: MenuProblem, path: string): number {
  const costs = problem.candidates
    .filter(({ call }) => call.path === path && call.family !== 'base')
    .map(({ call }) => costOf(call));
  return Math.max(0, ...costs);
}
