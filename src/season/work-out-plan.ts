import { planWeek } from '../pressure/plan/plan-week.ts';
import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import type { ExactSolver } from '../stats/exact-solver.ts';
import type { WeekInputs } from './read-week.ts';
import type { Listener, Platform } from './store.ts';
import { VERSION } from './version.ts';

/** Works a week's plan out from what was read of its files, saying what it is at. */
export async function workOutPlan(week: WeekInputs, listener: Listener, platform: Platform): Promise<WeekPlan> {
  const plan = planWeek({
    ...week,
    exact: await solverFor(week, platform),
    date: listener.today,
    version: VERSION,
    onStage: (stage) => listener.progress(stage),
  });
  listener.progress('');
  return plan;
}

/** Pressures up to which the menu's own search ended with a proof: the demo's weeks, invented libraries of twenty. */
const SMALL_LIBRARY = 24;

async function solverFor({ library }: WeekInputs, platform: Platform): Promise<ExactSolver | undefined> {
  const pressures = library?.calls.filter(({ family }) => family !== 'base').length ?? 0;
  return pressures <= SMALL_LIBRARY ? undefined : platform.exactSolver();
}
