import type { WeekPlan } from '../../pressure/plan/week-plan.ts';

/** Whether the opponent's film of a situation is thin, by the forecast of what they do with the ball there. */
export function isThinSituation(plan: WeekPlan, situation: string): boolean {
  const found = plan.forecast.forecasts.find((entry) => entry.target === 'answer' && entry.situation === situation);
  return found?.thin ?? false;
}
