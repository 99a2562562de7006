import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { defenseTemplate, profileTemplate, sheetTemplate, weekTemplate } from '../ingest/templates.ts';
import { CommandProblem, EXIT } from './exit-code.ts';
import type { Terminal } from './terminal.ts';
import { writeFiles } from './write-files.ts';

/** Makes a season folder with commented templates; a folder that holds anything is left alone. */
export async function newSeason(
  folder: string,
  options: { readonly week: string },
  terminal: Terminal,
): Promise<number> {
  const week = weekName(options.week);
  const there = await readdir(folder).catch(() => [] as string[]);
  if (there.length > 0)
    throw new CommandProblem('usage', `${folder} is not empty; nothing was made. Name a new folder.`);
  const written = await writeFiles(folder, [
    { name: 'defense.yaml', text: defenseTemplate() },
    { name: 'ours.csv', text: sheetTemplate('own') },
    { name: join(week, 'week.yaml'), text: weekTemplate() },
    { name: join(week, 'opponent.csv'), text: sheetTemplate('opponent') },
    { name: join('examples', 'profile.yaml'), text: profileTemplate() },
  ]);
  for (const path of written) terminal.note(`Wrote ${path}`);
  terminal.note(
    `Chart the opponent into ${join(folder, week, 'opponent.csv')}, then: pressure-plan check ${join(folder, week)}`,
  );
  return EXIT.fine;
}

function weekName(text: string): string {
  if (!/^\d{1,2}$/.test(text)) throw new CommandProblem('usage', `--week takes a number such as 3, got "${text}"`);
  return `week-${text.padStart(2, '0')}`;
}
