import type { WeekPlan } from '../../pressure/plan/week-plan.ts';

/** The base calls of the library in its order. */
export function baseCalls({ library }: WeekPlan): readonly string[] {
  return library?.calls.filter(({ family }) => family === 'base').map(({ name }) => name) ?? [];
}

/**
 * The base calls by name; nothing tells them apart by score, so all are named.
 *
 * @returns empty without a library or without a base call in it
 * @example "Stay Roof, Stay Split or Swap Roof"
 */
export function baseCallWords(plan: WeekPlan): string {
  const names = baseCalls(plan);
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
}
