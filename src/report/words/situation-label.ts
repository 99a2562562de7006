import { SITUATIONS } from '../../game/situations.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { plainWords } from './label.ts';

/** The id that stands for all situations together. */
export const ALL_SITUATIONS = 'all';

/** A situation of the plan as the page lists it. */
export interface SituationEntry {
  readonly id: string;
  readonly label: string;
  readonly expectedSnaps: number;
}

/** The situations of the plan in the order of the plan, without the one that stands for all. */
export function planSituations(plan: WeekPlan): readonly SituationEntry[] {
  return plan.scores.situations.filter((situation) => situation.id !== ALL_SITUATIONS);
}

/** The staff's word for a situation id; the id made readable when the plan does not name it. */
export function situationLabel(plan: WeekPlan, id: string): string {
  if (id === ALL_SITUATIONS) return 'All situations';
  return plan.scores.situations.find((situation) => situation.id === id)?.label ?? plainWords(id);
}

/** The staff's word for a situation id without a plan at hand. */
export function situationName(id: string): string {
  if (id === ALL_SITUATIONS) return 'All snaps';
  return SITUATIONS.find((situation) => situation.id === id)?.label ?? plainWords(id);
}
