import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import { changedPlace } from './changed-place.ts';
import { readSaved, type SavedJson, type UnusableJson } from './saved-json.ts';
import type { SeasonWeek } from './store.ts';

/** Sunday's plan as the report command wrote it, or why it cannot be used. */
export function savedPlan(at: SeasonWeek): Promise<SavedJson<WeekPlan>> {
  return readSaved<WeekPlan>({ path: `${at.week}/out/report.json`, schema: 'pressure-plan.week/2' }, at);
}

/** The plan worked out again where a saved one was changed, and the print of the files it was made from. */
export interface PlanAgain {
  readonly plan: WeekPlan;
  readonly inputs: string;
}

/**
 * Where a changed report.json differs from the plan worked out again; null when that cannot be told, because the files of
 * the season or the seed are others now.
 */
export function changedPlanPlace({ changed }: UnusableJson, { plan, inputs }: PlanAgain): string | null {
  if (!changed) return null;
  const { seal, ...found } = changed;
  if ((seal as { readonly inputs?: unknown }).inputs !== inputs) return null;
  if (typeof found['seed'] === 'number' && found['seed'] !== plan.seed) return null;
  // The day of writing is not that of Sunday, and a file knows neither "undefined" nor "not a number".
  const wanted = JSON.parse(JSON.stringify({ ...plan, date: found['date'] ?? plan.date })) as WeekPlan;
  return changedPlace(found, wanted);
}
