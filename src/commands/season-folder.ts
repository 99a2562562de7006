import { stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { isWorkbookName } from '../ingest/read-workbook.ts';
import { CommandProblem } from './exit-code.ts';
import { bytesOf, namesIn } from './read-disk.ts';
import { unreadFiles } from './unread-files.ts';
import { earlierWeeks } from './week-order.ts';

/** A file as found on disk; `file` is its path as the user would name it. */
export interface FoundFile {
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** The raw parts of a season folder that matter for one week; absent parts are null or empty. */
export interface SeasonFolder {
  readonly week: string;
  readonly season: string;
  readonly weekFile: FoundFile | null;
  readonly libraryFile: FoundFile | null;
  readonly profileFile: FoundFile | null;
  readonly archiveProfileFile: FoundFile | null;
  readonly ownProfileFile: FoundFile | null;
  readonly formationFile: FoundFile | null;
  readonly opponent: readonly FoundFile[];
  readonly archive: readonly FoundFile[];
  /** Tallies of other offenses, in the archive's folder: files with `counts` in their names. */
  readonly counts: readonly FoundFile[];
  /** Scouted games and played games of the season's earlier weeks: base rates too. */
  readonly earlierWeeks: readonly FoundFile[];
  readonly ownFilm: readonly FoundFile[];
  /** Files whose names are close to one that is read, each with what to do about it. */
  readonly unread: readonly string[];
}

const OPPONENT = /^opponent/i;
const SHEET = /\.(csv|tsv|txt|xlsx)$/i;

/**
 * Reads every file of the season that belongs to a week; `out` folders are never read.
 *
 * @throws CommandProblem when the folder is missing or holds no opponent sheet
 */
export async function readSeasonFolder(weekFolder: string): Promise<SeasonFolder> {
  const week = resolve(weekFolder);
  await requireFolder(week, weekFolder);
  const season = dirname(week);
  const opponent = await readSheets(week, weekFolder, OPPONENT);
  if (opponent.length === 0)
    throw new CommandProblem(
      'faults',
      [
        `${weekFolder} holds no sheet named opponent….csv. "pressure-plan new" writes a commented template.`,
        ...(await unreadFiles(weekFolder)),
      ].join('\n'),
    );
  return {
    week,
    season,
    opponent,
    weekFile: await readOne(week, weekFolder, 'week.yaml'),
    libraryFile: await readOne(season, join(weekFolder, '..'), 'defense.yaml'),
    profileFile:
      (await readOne(week, weekFolder, 'profile.yaml')) ??
      (await readOne(season, join(weekFolder, '..'), 'profile.yaml')),
    formationFile:
      (await readOne(week, weekFolder, 'formations.yaml')) ??
      (await readOne(season, join(weekFolder, '..'), 'formations.yaml')),
    ownProfileFile: await readOne(season, join(weekFolder, '..'), 'ours-profile.yaml'),
    archiveProfileFile: await readOne(join(season, 'archive'), join(weekFolder, '..', 'archive'), 'profile.yaml'),
    archive: await readSheets(join(season, 'archive'), join(weekFolder, '..', 'archive'), /^(?!.*counts)/i),
    counts: await readSheets(join(season, 'archive'), join(weekFolder, '..', 'archive'), /counts/i),
    ...(await readEarlierWeeks(season, week, weekFolder)),
    unread: await unreadFiles(weekFolder),
  };
}

/** Whether a week folder holds a sheet of the opponent. */
export async function holdsOpponent(weekFolder: string): Promise<boolean> {
  return (await namesIn(resolve(weekFolder), weekFolder)).some((name) => SHEET.test(name) && OPPONENT.test(name));
}

/** Sheets of a folder whose names match, in name order; an absent folder has none. */
export async function readSheets(folder: string, shown: string, name: RegExp): Promise<FoundFile[]> {
  const names = await namesIn(folder, shown);
  const sheets = names.filter((entry) => SHEET.test(entry) && name.test(entry) && !entry.startsWith('.'));
  const found: FoundFile[] = [];
  for (const entry of sheets) {
    const file = join(shown, entry);
    found.push({ file, bytes: await sheetBytes(join(folder, entry), file) });
  }
  return found;
}

/** One file of a folder by its name in lower case, however it is written there; null when it is not there. */
export async function readOne(folder: string, shown: string, name: string): Promise<FoundFile | null> {
  const found = (await namesIn(folder, shown)).find((entry) => entry.toLowerCase() === name);
  if (found === undefined) return null;
  const file = join(shown, found);
  return { file, bytes: await bytesOf(join(folder, found), file) };
}

async function readEarlierWeeks(season: string, week: string, shown: string) {
  const names = await namesIn(season, join(shown, '..'));
  const weeks = earlierWeeks(names, basename(week));
  const scouted: FoundFile[] = [];
  const ownFilm = await readSheets(season, join(shown, '..'), /^ours/i);
  for (const name of weeks) {
    const folder = join(season, name);
    const path = join(shown, '..', name);
    scouted.push(...(await readSheets(folder, path, /^(opponent|game)/i)));
    ownFilm.push(...(await readSheets(folder, path, /^ours/i)));
  }
  return { earlierWeeks: scouted, ownFilm };
}

/** The sheet's text as bytes; a workbook that cannot be read stays as it is and is refused when it is read as text. */
async function sheetBytes(path: string, shown: string): Promise<Uint8Array> {
  const bytes = await bytesOf(path, shown);
  if (!isWorkbookName(path)) return bytes;
  // Few runs meet a workbook, so what reads it is loaded only then.
  const { workbookText } = await import('./workbook-text.ts');
  const reading = await workbookText(bytes);
  return reading.kind === 'sheet' ? new TextEncoder().encode(reading.csv) : bytes;
}

async function requireFolder(path: string, shown: string): Promise<void> {
  const about = await stat(path).catch(() => null);
  if (!about)
    throw new CommandProblem(
      'usage',
      `there is no folder ${shown}. Give the folder of one week, such as season/week-09.`,
    );
  if (!about.isDirectory())
    throw new CommandProblem('usage', `${shown} is a file. Give the folder of one week, such as season/week-09.`);
}
