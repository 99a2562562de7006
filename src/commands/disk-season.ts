import { readdirSync, statSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import type { SeasonFiles, SeasonPlace, SeasonWeek } from '../season/store.ts';
import { UserProblem } from '../season/user-problem.ts';
import { NODE_PLATFORM } from './node-platform.ts';
import { bytesOf, entriesIn, isThere } from './read-disk.ts';

/**
 * A week's folder on disk, with the season around it; names are shown as they follow from the folder's name as it was
 * typed.
 *
 * @throws UserProblem when it is not there or is a file
 */
export function diskWeek(weekFolder: string): SeasonWeek {
  requireFolder(weekFolder);
  const folder = resolve(weekFolder);
  const week = basename(folder);
  const shown = (path: string) => {
    const [first, ...rest] = path.split('/');
    return first === week ? join(weekFolder, ...rest) : join(weekFolder, '..', path);
  };
  return { files: diskFiles(dirname(folder), shown), platform: NODE_PLATFORM, week };
}

/** Any folder on disk, by its name as it was typed. */
export function diskPlace(folder: string): SeasonPlace {
  return { files: diskFiles(folder, (path) => join(folder, path)), platform: NODE_PLATFORM };
}

function diskFiles(root: string, shown: SeasonFiles['shown']): SeasonFiles {
  return {
    list: async (folder) => entriesIn(join(root, folder), shown(folder)),
    read: async (path) => (isThere(join(root, path)) ? bytesOf(join(root, path), shown(path)) : null),
    shown,
  };
}

function requireFolder(shown: string): void {
  const about = statSync(shown, { throwIfNoEntry: false });
  if (!about)
    throw new UserProblem(
      'usage',
      `there is no folder ${shown}. ${weekMeant(shown) ?? 'Give the folder of one week, such as season/week-09.'}`,
    );
  if (!about.isDirectory())
    throw new UserProblem('usage', `${shown} is a file. Give the folder of one week, such as season/week-09.`);
}

/** The week of the same number under another name, such as week-01 for week-1. */
function weekMeant(shown: string): string | undefined {
  const numberOf = (name: string) => Number(/^week\D*(\d+)$/i.exec(name)?.[1] ?? Number.NaN);
  const around = dirname(shown);
  const names = statSync(around, { throwIfNoEntry: false })?.isDirectory() ? readdirSync(around) : [];
  const meant = names.find((name) => numberOf(name) === numberOf(basename(shown)));
  return meant && `Did you mean ${join(around, meant)}?`;
}
