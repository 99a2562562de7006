import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import type { SundaySource } from '../pressure/review/review.ts';
import { readWeek, type WeekInputs } from './read-week.ts';
import type { SavedJson } from './saved-json.ts';
import { inputsPrint } from './seal.ts';
import { readSeasonFolder } from './season-folder.ts';
import type { Listener, SeasonWeek } from './store.ts';
import { savedPlan } from './sunday-plan.ts';

/** A week with Sunday's plan, and where the plan came from. */
export interface PlannedWeek {
  readonly week: WeekInputs;
  /** The print of the files it was read from. */
  readonly inputs: string;
  readonly plan: WeekPlan;
  readonly sunday: 'saved' | 'worked_out_again';
}

/**
 * Reads a week and Sunday's plan: the one in out/report.json when it was made from the same files, else worked out again
 * without writing it.
 */
export async function plannedWeek(at: SeasonWeek, listener: Listener): Promise<PlannedWeek> {
  const { week, inputs, saved } = await weekWithSaved(at);
  if (saved.kind === 'sound' && saved.seal.inputs === inputs) {
    return { week, inputs, plan: saved.value, sunday: 'saved' };
  }
  if (saved.kind === 'sound')
    listener.note("out/report.json was made from other inputs; Sunday's plan is worked out again");
  if (saved.kind === 'absent') listener.note("No out/report.json of this version; Sunday's plan is worked out");
  return workedOutAgain({ at, week, inputs, saved }, listener);
}

/** A week with the plan as it was said on Sunday. */
export interface SaidWeek extends Omit<PlannedWeek, 'sunday'> {
  readonly sunday: SundaySource;
}

/**
 * Reads a week and the plan that was said on Sunday: the saved one even where inputs were changed after it, for a
 * forecast is judged as it was given; without one it is worked out again. No plan ever reads its own week's game.
 */
export async function planSaidOnSunday(at: SeasonWeek, listener: Listener): Promise<SaidWeek> {
  const { week, inputs, saved } = await weekWithSaved(at);
  if (saved.kind === 'sound' && saved.value.opponent === week.settings.opponent) {
    const sunday = saved.seal.inputs === inputs ? 'saved' : 'saved_of_other_inputs';
    return { week, inputs, plan: saved.value, sunday };
  }
  if (saved.kind === 'sound')
    listener.note(
      `out/report.json is a plan against ${saved.value.opponent}, not ${week.settings.opponent}; Sunday's plan is worked out without the game`,
    );
  if (saved.kind === 'absent')
    listener.note("No out/report.json of this version and opponent; Sunday's plan is worked out without the game");
  return workedOutAgain({ at, week, inputs, saved }, listener);
}

interface WeekWithSaved {
  readonly at: SeasonWeek;
  readonly week: WeekInputs;
  /** The print of the files the week was read from. */
  readonly inputs: string;
  readonly saved: SavedJson<WeekPlan>;
}

async function weekWithSaved(at: SeasonWeek): Promise<WeekWithSaved> {
  const folder = await readSeasonFolder(at);
  const inputs = inputsPrint(folder, at.platform.digest);
  return { at, week: (await readWeek(folder)).week, inputs, saved: await savedPlan(at) };
}

async function workedOutAgain({ at, week, inputs, saved }: WeekWithSaved, listener: Listener) {
  if (saved.kind === 'unusable') listener.note(`${saved.problem}; Sunday's plan is worked out again`);
  const { workOutPlan } = await import('./work-out-plan.ts');
  const plan = await workOutPlan(week, listener, at.platform);
  if (saved.kind === 'unusable') {
    listener.note(`To write it again: pressure-plan report ${at.files.shown(at.week)}`);
  }
  return { week, inputs, plan, sunday: 'worked_out_again' as const };
}
