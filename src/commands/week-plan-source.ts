import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import type { SundaySource } from '../pressure/review/review.ts';
import { readWeek, type WeekInputs } from './read-week.ts';
import { readSeasonFolder } from './season-folder.ts';
import { planFits, savedPlan } from './sunday-plan.ts';
import type { Terminal } from './terminal.ts';

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
  return workedOutAgain(week, terminal);
}

/** A week with the plan as it was said on Sunday. */
export interface SaidWeek extends Omit<PlannedWeek, 'sunday'> {
  readonly sunday: SundaySource;
}

/**
 * Reads a week and the plan that was said on Sunday: the saved one even where inputs were changed after it, for a
 * forecast is judged as it was given; without one it is worked out again. No plan ever reads its own week's game.
 */
export async function planSaidOnSunday(weekFolder: string, terminal: Terminal): Promise<SaidWeek> {
  const week = readWeek(await readSeasonFolder(weekFolder));
  const saved = await savedPlan(weekFolder);
  if (saved && saved.opponent === week.settings.opponent)
    return { week, plan: saved, sunday: planFits(saved, week) ? 'report.json' : 'report.json of other inputs' };
  terminal.note("No out/report.json of this version and opponent; Sunday's plan is worked out without the game");
  return workedOutAgain(week, terminal);
}

async function workedOutAgain(week: WeekInputs, terminal: Terminal): Promise<PlannedWeek> {
  const { workOutPlan } = await import('./work-out-plan.ts');
  return { week, plan: await workOutPlan(week, terminal), sunday: 'worked out again' };
}
