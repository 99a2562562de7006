import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import { readWeek, type WeekInputs } from './read-week.ts';
import { readSeasonFolder } from './season-folder.ts';
import { planFits, savedPlan } from './sunday-plan.ts';
import type { Terminal } from './terminal.ts';
import { VERSION } from './version.ts';

/** A week with Sunday's plan, and where the plan came from. */
export interface PlannedWeek {
  readonly week: WeekInputs;
  readonly plan: WeekPlan;
  readonly sunday: 'report.json' | 'worked out again';
}

/**
 * Reads a week and Sunday's plan: the one in out/report.json when it was made from the same inputs, else worked out again
 * without writing it.
 */
export async function plannedWeek(weekFolder: string, terminal: Terminal): Promise<PlannedWeek> {
  const week = readWeek(await readSeasonFolder(weekFolder));
  const saved = await savedPlan(weekFolder);
  if (saved && planFits(saved, week)) return { week, plan: saved, sunday: 'report.json' };
  terminal.note(
    saved
      ? "out/report.json was made from other inputs; Sunday's plan is worked out again"
      : "No out/report.json of this version; Sunday's plan is worked out",
  );
  const { planWeek } = await import('../pressure/plan/plan-week.ts');
  const plan = planWeek({
    ...week,
    date: terminal.today,
    version: VERSION,
    onStage: (stage) => terminal.progress(stage),
  });
  terminal.progress('');
  return { week, plan, sunday: 'worked out again' };
}
