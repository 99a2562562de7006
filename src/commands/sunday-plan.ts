import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { countedSnaps } from '../pressure/forecast/counts/count-row.ts';
import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import type { WeekInputs } from './read-week.ts';
import { VERSION } from './version.ts';
import { earlierWeeks } from './week-order.ts';

/** Sunday's plan as the report command wrote it, or null when there is none of this version. */
export async function savedPlan(weekFolder: string): Promise<WeekPlan | null> {
  const text = await readFile(join(weekFolder, 'out', 'report.json'), 'utf8').catch(() => null);
  if (text === null) return null;
  try {
    const plan = JSON.parse(text) as WeekPlan;
    return plan.schema === 'pressure-plan.week/1' && plan.version === VERSION ? plan : null;
  } catch {
    return null;
  }
}

/** Whether a saved plan was made from these very inputs, as far as its chapters tell. */
export function planFits(plan: WeekPlan, week: WeekInputs): boolean {
  const settings = { ...plan.settings, seed: week.settings.seed };
  return (
    same(settings, week.settings) &&
    same(plan.library, week.library) &&
    same(plan.film, week.film) &&
    plan.forecast.archive.snaps === (week.archive?.size ?? 0) + countedSnaps(week.counts)
  );
}

/**
 * Whether nothing the plan is made from was written after it: sheets and settings of the season, its earlier weeks and
 * this week's scouted games. Tonight's sheets do not count.
 */
export async function planIsNewest(weekFolder: string): Promise<boolean> {
  const week = resolve(weekFolder);
  const season = dirname(week);
  const made = await changedAt(join(week, 'out', 'report.json'));
  const names = await readdir(season).catch(() => [] as string[]);
  const earlier = earlierWeeks(names, basename(week));
  const folders = [season, join(season, 'archive'), ...earlier.map((name) => join(season, name))];
  const inputs = await Promise.all(folders.map((folder) => inputsIn(folder, INPUT)));
  const own = await inputsIn(week, OWN_INPUT);
  const times = await Promise.all([...inputs.flat(), ...own].map(changedAt));
  return times.every((time) => time <= made);
}

const INPUT = /\.(csv|tsv|txt|xlsx|yaml)$/i;
const OWN_INPUT = /^(opponent.*\.(csv|tsv|txt|xlsx)|(week|profile|formations)\.yaml)$/i;

async function inputsIn(folder: string, pattern: RegExp): Promise<string[]> {
  const names = await readdir(folder).catch(() => [] as string[]);
  return names.filter((name) => pattern.test(name)).map((name) => join(folder, name));
}

async function changedAt(path: string): Promise<number> {
  return (await stat(path).catch(() => null))?.mtimeMs ?? 0;
}

/** Equal as JSON: what a plan loses on its way to disk (undefined, not a number) is no difference. */
function same(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
