import type { MenuProblem } from './weekly-menu-problem.ts';
import type { ChosenMenu } from './weekly-menu-program.ts';

/** Why a call is on the menu: where it is called most, and what it saves there. */
export function whyCarried(problem: MenuProblem, chosen: ChosenMenu, c: number): string {
  const [most] = problem.situations
    .map((situation, s) => ({ situation, s, calls: situation.expectedSnaps * (chosen.mix[s]?.[c] ?? 0) }))
    .sort((a, b) => b.calls - a.calls);
  if (!most) return 'kept by a limit';
  const points = 10 * (problem.candidates[c]?.value[most.s] ?? 0);
  return `mostly ${most.situation.label}: ${points >= 0 ? '+' : ''}${points.toFixed(1)} points per ten snaps against the base`;
}

/** Why each sound call that is not carried is not. */
export function whyLeft(
  problem: MenuProblem,
  chosen: ChosenMenu,
  membership: readonly number[],
): { call: string; why: string }[] {
  return problem.candidates.flatMap(({ call, value }, c) => {
    if (call.family === 'base' || chosen.carried.includes(c)) return [];
    const best = problem.situations
      .map(({ label }, s) => ({ label, points: 10 * (value[s] ?? 0) }))
      .sort((a, b) => b.points - a.points)[0];
    const where = best
      ? `at its best ${best.points >= 0 ? '+' : ''}${best.points.toFixed(1)} points per ten snaps (${best.label})`
      : 'not scored';
    return [{ call: call.name, why: `${where}; on the menu in ${Math.round(100 * (membership[c] ?? 0))}% of draws` }];
  });
}
