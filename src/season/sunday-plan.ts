import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import { readSaved, type SavedJson } from './saved-json.ts';
import type { SeasonWeek } from './store.ts';

/** Sunday's plan as the report command wrote it, or why it cannot be used. */
export function savedPlan(at: SeasonWeek): Promise<SavedJson<WeekPlan>> {
  return readSaved<WeekPlan>({ path: `${at.week}/out/report.json`, schema: 'pressure-plan.week/4' }, at);
}
