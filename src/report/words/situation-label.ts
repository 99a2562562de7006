import { isSituation, SITUATION_TABLE } from '../../game/situations.ts';
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
  return plan.scores.situations
    .filter(({ id }) => id !== ALL_SITUATIONS)
    .map((situation) => ({ ...situation, label: situationLabel(situation.id) }));
}

/** The staff's word for a situation where the others stand beside it; an id we do not know is made readable. */
export function situationLabel(id: string): string {
  return id === ALL_SITUATIONS ? 'All situations' : situationName(id);
}

/** The staff's word for a situation on its own, such as that of one snap. */
export function situationName(id: string): string {
  if (id === ALL_SITUATIONS) return 'All snaps';
  return isSituation(id) ? SITUATION_TABLE[id].label : plainWords(id);
}
