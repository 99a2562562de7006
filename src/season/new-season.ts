import { type WeekSettings, weekSettingsSchema } from '../game/week-settings.ts';
import { formationTemplate } from '../ingest/formation/formation-template.ts';
import { defenseStarter, defenseTemplate, profileTemplate, sheetTemplate, weekTemplate } from '../ingest/templates.ts';
import { readSettings } from './read-settings.ts';
import { readOne } from './season-folder.ts';
import type { OutputFile, SeasonPlace } from './store.ts';
import { UserProblem } from './user-problem.ts';
import { earlierWeeks } from './week-order.ts';

/** The files a season begins with, by their paths: commented templates, and its first week. */
export function seasonFiles(week: string): OutputFile[] {
  return [
    { name: 'defense.yaml', text: defenseStarter() },
    { name: 'ours.csv', text: sheetTemplate('own') },
    ...weekFiles(week),
    { name: 'examples/defense-in-full.yaml', text: defenseTemplate() },
    { name: 'examples/profile.yaml', text: profileTemplate() },
    { name: 'examples/formations.yaml', text: formationTemplate() },
  ];
}

/**
 * The files of a further week: the settings and practice days of the last one before it, and its profile where it has
 * one.
 *
 * @param there - names in the season's folder
 */
export async function nextWeek(at: SeasonPlace, there: readonly string[], week: string): Promise<OutputFile[]> {
  const last = earlierWeeks(there, week).at(-1);
  if (last === undefined) return weekFiles(week);
  const before = await readSettings(await readOne(at, last, 'week.yaml'), () => weekSettingsSchema);
  const profile = await readOne(at, last, 'profile.yaml');
  const copy = profile && { name: `${week}/profile.yaml`, text: new TextDecoder().decode(profile.bytes) };
  return [...weekFiles(week, before ?? undefined), ...(copy ? [copy] : [])];
}

/**
 * The files a week begins with.
 *
 * @param before - settings of the week before, of which most stay
 */
export function weekFiles(week: string, before?: WeekSettings): OutputFile[] {
  return [
    { name: `${week}/week.yaml`, text: weekTemplate(before) },
    { name: `${week}/opponent.csv`, text: sheetTemplate('opponent') },
  ];
}

/**
 * The name of a week's folder, such as `week-03` for `3`.
 *
 * @throws UserProblem when the text is not a number of one or two digits
 */
export function weekName(text: string): string {
  if (!/^\d{1,2}$/.test(text)) throw new UserProblem('usage', `--week takes a number such as 3, got "${text}"`);
  return `week-${text.padStart(2, '0')}`;
}
