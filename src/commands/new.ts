import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { nextWeek, seasonFiles, weekName } from '../season/new-season.ts';
import type { OutputFile } from '../season/store.ts';
import { UserProblem } from '../season/user-problem.ts';
import { deskFile, HOW_TO_OPEN } from './desk-file.ts';
import { diskPlace } from './disk-season.ts';
import { EXIT } from './exit-code.ts';
import type { Terminal } from './terminal.ts';
import { writeFiles } from './write-files.ts';

/**
 * Makes a season folder with commented templates, or a further week in a season that is there. Nothing is replaced: a
 * folder that holds anything else, or that week, is left alone.
 */
export async function newSeason(
  folder: string,
  options: { readonly week: string },
  terminal: Terminal,
): Promise<number> {
  const week = weekName(options.week);
  const there = await readdir(folder).catch(() => [] as string[]);
  const written = await writeFiles(
    folder,
    there.length === 0 ? await wholeSeason(week) : await furtherWeek(folder, there, week),
  );
  for (const path of written) terminal.note(`Wrote ${path}`);
  if (written.some((path) => path.endsWith('desk.html'))) terminal.note(HOW_TO_OPEN);
  const sheet = join(folder, week, 'opponent.csv');
  terminal.note(`Chart the opponent into ${sheet}, then: pressure-plan check ${join(folder, week)}`);
  terminal.note(
    `A sheet with headers of your own takes its place (.csv, .tsv, .xlsx), then: pressure-plan adopt ${sheet}`,
  );
  return EXIT.fine;
}

/** A season's files with the desk beside them, where the desk was built. */
async function wholeSeason(week: string): Promise<OutputFile[]> {
  const text = await deskFile();
  return [...seasonFiles({ week }), ...(text === null ? [] : [{ name: 'desk.html', text }])];
}

/** @throws UserProblem unless the folder is a season that has no such week yet */
async function furtherWeek(folder: string, there: readonly string[], week: string): Promise<OutputFile[]> {
  const isSeason = there.includes('defense.yaml') || there.some((name) => /^week-/i.test(name));
  if (!isSeason) throw new UserProblem('usage', `${folder} is not empty; nothing was made. Name a new folder.`);
  if (!there.includes(week)) return nextWeek(diskPlace(folder).files, { week });
  const place = join(folder, week);
  throw new UserProblem('usage', `${place} is there already; nothing was made. Name the next one with --week.`);
}
