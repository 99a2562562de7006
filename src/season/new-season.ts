import { formationTemplate } from '../ingest/formation/formation-template.ts';
import { defenseTemplate, profileTemplate, sheetTemplate, weekTemplate } from '../ingest/templates.ts';
import type { OutputFile } from './store.ts';
import { UserProblem } from './user-problem.ts';

/** The files a season begins with, by their paths: commented templates, and its first week. */
export function seasonFiles(week: string): OutputFile[] {
  return [
    { name: 'defense.yaml', text: defenseTemplate() },
    { name: 'ours.csv', text: sheetTemplate('own') },
    ...weekFiles(week),
    { name: 'examples/profile.yaml', text: profileTemplate() },
    { name: 'examples/formations.yaml', text: formationTemplate() },
  ];
}

/** The files a week begins with. */
export function weekFiles(week: string): OutputFile[] {
  return [
    { name: `${week}/week.yaml`, text: weekTemplate() },
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
