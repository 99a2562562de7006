import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { knownForecasts } from './known-forecasts.ts';

/** Whether the opponent's film of a situation is thin, by the forecast of what they do with the ball there. */
export function isThinSituation(plan: WeekPlan, situation: string): boolean {
  const found = knownForecasts(plan, 'answer').find((entry) => entry.situation === situation);
  return found?.thin ?? false;
}
