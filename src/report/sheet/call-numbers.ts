import type { Call } from '../../game/call-library.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { isCarried } from '../view/carried-calls.ts';

/** A call with its number on the sheet and the wristband. */
export interface NumberedCall {
  readonly number: number;
  readonly call: Call;
}

/** The base calls and the pressures carried, numbered from 1: base first, then by how often they are called. */
export function numberedCalls(plan: WeekPlan): readonly NumberedCall[] {
  const { library, menu } = plan;
  if (library === null) return [];
  const usesOf = (call: Call) =>
    menu?.kind === 'menu' ? (menu.calls.find((entry) => entry.call === call.name)?.expectedCalls ?? 0) : 0;
  const base = library.calls.filter(({ family }) => family === 'base');
  const pressures = library.calls
    .filter((call) => call.family !== 'base' && isCarried(plan)(call.name))
    .sort((a, b) => usesOf(b) - usesOf(a));
  return [...base, ...pressures].map((call, i) => ({ number: i + 1, call }));
}
