import { weekSettingsSchema } from '../game/week-settings.ts';
import { formationTemplate } from '../ingest/formation/formation-template.ts';
import {
  defenseStarter,
  defenseTemplate,
  profileTemplate,
  sheetTemplate,
  type WeekStart,
  weekTemplate,
} from '../ingest/templates.ts';
import { readSettings } from './read-settings.ts';
import { readOne } from './season-folder.ts';
import type { OutputFile, SeasonFiles } from './store.ts';
import { UserProblem } from './user-problem.ts';
import { earlierWeeks } from './week-order.ts';

/** A week to be made. */
export interface NewWeek {
  /** The name of its folder. */
  readonly week: string;
  /** Left out: a placeholder to be typed over. */
  readonly opponent?: string;
}

/** The files a season begins with, by their paths: commented templates, and its first week. */
export function seasonFiles({ week, opponent }: NewWeek): OutputFile[] {
  return [
    { name: 'defense.yaml', text: defenseStarter() },
    { name: 'ours.csv', text: sheetTemplate('own') },
    ...weekFiles(week, named(opponent)),
    { name: 'examples/defense-in-full.yaml', text: defenseTemplate() },
    { name: 'examples/profile.yaml', text: profileTemplate() },
    { name: 'examples/formations.yaml', text: formationTemplate() },
  ];
}

/**
 * The files of a further week: the settings and practice days of the last one before it, and its profile where it has
 * one.
 *
 * @throws UserProblem when the settings of the week before have faults
 */
export async function nextWeek(files: SeasonFiles, { week, opponent }: NewWeek): Promise<OutputFile[]> {
  const there = await files.list('');
  const names = there.filter(({ isFolder }) => isFolder).map(({ name }) => name);
  const last = earlierWeeks(names, week).at(-1);
  if (last === undefined) return weekFiles(week, named(opponent));
  const before = await readSettings(await readOne({ files }, last, 'week.yaml'), () => weekSettingsSchema);
  const profile = await readOne({ files }, last, 'profile.yaml');
  const copy = profile && { name: `${week}/profile.yaml`, text: new TextDecoder().decode(profile.bytes) };
  return [...weekFiles(week, { ...named(opponent), ...(before && { before }) }), ...(copy ? [copy] : [])];
}

const named = (opponent: string | undefined): WeekStart => (opponent === undefined ? {} : { opponent });

function weekFiles(week: string, start: WeekStart): OutputFile[] {
  return [
    { name: `${week}/week.yaml`, text: weekTemplate(start) },
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
