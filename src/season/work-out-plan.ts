import { type PlanStage, planWeek } from '../pressure/plan/plan-week.ts';
import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import type { WeekInputs } from './read-week.ts';
import type { Listener, Platform } from './store.ts';
import { VERSION } from './version.ts';

const STAGES: Readonly<Record<PlanStage, string>> = {
  forecast: 'Forecasting their answers',
  protection: 'Matching protections and racing the ball',
  scores: 'Scoring the families',
  own_film: 'Reading our own film',
  menu: 'Choosing the menu',
};

/** Works a week's plan out from what was read of its files, saying what it is at. */
export async function workOutPlan(week: WeekInputs, listener: Listener, platform: Platform): Promise<WeekPlan> {
  const plan = planWeek({
    ...week,
    exact: week.library ? await platform.exactSolver() : undefined,
    date: listener.today,
    version: VERSION,
    onStage: (stage) => listener.progress(STAGES[stage]),
  });
  listener.progress('');
  return plan;
}
