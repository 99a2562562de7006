import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { numberedCalls } from '../../report/sheet/call-numbers.ts';

/** What the strip takes from the plan worked out last. */
export interface LastPlan {
  /** The calls carried, as the call sheet and the wristband number them. */
  readonly calls: readonly string[];
  /** What one more charted column would do. */
  readonly worth: readonly string[];
}

const NONE: LastPlan = { calls: [], worth: [] };

/** The last plan as report.json holds it; nothing before there is one. */
export function lastPlan(report: string): LastPlan {
  if (report === '') return NONE;
  try {
    const plan = JSON.parse(report) as WeekPlan;
    return { calls: numberedCalls(plan).map(({ call }) => call.name), worth: worthOf(plan) };
  } catch {
    // A plan that was changed by hand says nothing here; the Plan view says what is wrong with it.
    return NONE;
  }
}

function worthOf({ fit }: WeekPlan): readonly string[] {
  const worth = (fit?.charting ?? []).filter(({ chanceChoiceChanges }) => chanceChoiceChanges >= LEAST_CHANCE);
  return worth.slice(0, 4).map(({ column, chanceChoiceChanges }) => {
    const label = column.replaceAll('_', ' ');
    return `${label}: ${Math.round(100 * chanceChoiceChanges)} chances in 100 it changes your best pressure`;
  });
}

/** Under one chance in twenty a column is not worth a key a snap; judgment. */
const LEAST_CHANCE = 0.05;
