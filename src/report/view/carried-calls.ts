import type { WeekPlan } from '../../pressure/plan/week-plan.ts';

/**
 * The calls the page speaks of: those on the menu, or every call when there is no menu.
 *
 * @returns a test on a call's name
 */
export function isCarried(plan: WeekPlan): (call: string) => boolean {
  if (plan.menu?.kind !== 'menu') return () => true;
  const names = new Set(plan.menu.calls.map((call) => call.call));
  return (call) => names.has(call);
}
