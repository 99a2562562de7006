import { isWorkbookName } from '../ingest/read-workbook.ts';
import type { SeasonPlace, SeasonWeek } from './store.ts';
import { unreadFiles } from './unread-files.ts';
import { UserProblem } from './user-problem.ts';
import { earlierWeeks } from './week-order.ts';

/** A file with its bytes; `file` is its path as the user would name it. */
export interface FoundFile {
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** A file of the season. */
export interface SeasonFile extends FoundFile {
  /** Its path within the season, with `/` between names. */
  readonly path: string;
}

/** The raw parts of a season that matter for one week; absent parts are null or empty. */
export interface SeasonFolder {
  readonly weekFile: SeasonFile | null;
  readonly libraryFile: SeasonFile | null;
  readonly profileFile: SeasonFile | null;
  readonly archiveProfileFile: SeasonFile | null;
  readonly ownProfileFile: SeasonFile | null;
  readonly formationFile: SeasonFile | null;
  readonly opponent: readonly SeasonFile[];
  readonly archive: readonly SeasonFile[];
  /** Tallies of other offenses, in the archive's folder: files with `counts` in their names. */
  readonly counts: readonly SeasonFile[];
  /** Scouted games and played games of the season's earlier weeks: base rates too. */
  readonly earlierWeeks: readonly SeasonFile[];
  readonly ownFilm: readonly SeasonFile[];
  /** Files with a name close to one that is read, each with what to do about it. */
  readonly unread: readonly string[];
}

const OPPONENT = /^opponent/i;
const SHEET = /\.(csv|tsv|txt|xlsx)$/i;

/**
 * Reads every file of the season that belongs to a week; `out` folders are never read.
 *
 * @throws UserProblem when the week holds no opponent sheet
 */
export async function readSeasonFolder(at: SeasonWeek): Promise<SeasonFolder> {
  const { week } = at;
  const opponent = await readSheets(at, week, OPPONENT);
  if (opponent.length === 0) throw new UserProblem('faults', (await withoutOpponent(at)).join('\n'));
  return {
    opponent,
    weekFile: await readOne(at, week, 'week.yaml'),
    libraryFile: await readOne(at, '', 'defense.yaml'),
    profileFile: (await readOne(at, week, 'profile.yaml')) ?? (await readOne(at, '', 'profile.yaml')),
    formationFile: (await readOne(at, week, 'formations.yaml')) ?? (await readOne(at, '', 'formations.yaml')),
    ownProfileFile: await readOne(at, '', 'ours-profile.yaml'),
    archiveProfileFile: await readOne(at, 'archive', 'profile.yaml'),
    archive: await readSheets(at, 'archive', /^(?!.*counts)/i),
    counts: await readSheets(at, 'archive', /counts/i),
    ...(await readEarlierWeeks(at)),
    unread: await unreadFiles(at),
  };
}

/** What to do where there is no sheet: the week meant where a season was named, else what lies there under other names. */
async function withoutOpponent(at: SeasonWeek): Promise<readonly string[]> {
  const absent = `${at.files.shown(at.week)} holds no sheet named opponent….csv. "pressure-plan new" writes a commented template.`;
  const meant = await weekInside(at);
  return [absent, ...(meant.length > 0 ? meant : await unreadFiles(at))];
}

/** Where the season was named in place of one of its weeks: the latest of them. */
async function weekInside({ files, week }: SeasonWeek): Promise<readonly string[]> {
  const weeks = (await files.list(week)).filter(({ name, isFolder }) => isFolder && /^week/i.test(name));
  const last = weeks
    .map(({ name }) => name)
    .sort()
    .at(-1);
  return last === undefined ? [] : [`It looks like a season. Did you mean ${files.shown(pathIn(week, last))}?`];
}

/** Whether the week holds a sheet of the opponent. */
export async function holdsOpponent({ files, week }: SeasonWeek): Promise<boolean> {
  return (await files.list(week)).some(({ name }) => SHEET.test(name) && OPPONENT.test(name));
}

/** Sheets of a folder with matching names, in name order; an absent folder has none. */
export async function readSheets(at: SeasonPlace, folder: string, name: RegExp): Promise<SeasonFile[]> {
  const entries = await at.files.list(folder);
  const sheets = entries.filter((entry) => SHEET.test(entry.name) && name.test(entry.name) && entry.name[0] !== '.');
  const found: SeasonFile[] = [];
  for (const entry of sheets) found.push(await readSheetFile(at, pathIn(folder, entry.name)));
  return found;
}

/** One file of a folder by its name in lower case, however it is written there; null when it is not there. */
export async function readOne(
  { files }: Pick<SeasonPlace, 'files'>,
  folder: string,
  name: string,
): Promise<SeasonFile | null> {
  const found = (await files.list(folder)).find((entry) => entry.name.toLowerCase() === name);
  if (found === undefined) return null;
  const path = pathIn(folder, found.name);
  const bytes = await files.read(path);
  return bytes === null ? null : { path, file: files.shown(path), bytes };
}

function pathIn(folder: string, name: string): string {
  return folder === '' ? name : `${folder}/${name}`;
}

async function readEarlierWeeks(at: SeasonWeek) {
  const names = (await at.files.list('')).map(({ name }) => name);
  const scouted: SeasonFile[] = [];
  const ownFilm = await readSheets(at, '', /^ours/i);
  for (const week of earlierWeeks(names, at.week)) {
    scouted.push(...(await readSheets(at, week, /^(opponent|game)/i)));
    ownFilm.push(...(await readSheets(at, week, /^ours/i)));
  }
  return { earlierWeeks: scouted, ownFilm };
}

/** The sheet's text as bytes; a workbook that cannot be read stays as it is and is refused when it is read as text. */
async function readSheetFile({ files }: SeasonPlace, path: string): Promise<SeasonFile> {
  const file = files.shown(path);
  const bytes = await files.read(path);
  if (bytes === null) throw new UserProblem('faults', `${file} was taken away while it was read; try again`);
  if (!isWorkbookName(path)) return { path, file, bytes };
  // Few runs meet a workbook, so what reads it is loaded only then.
  const { workbookText } = await import('./workbook-text.ts');
  const reading = await workbookText(bytes);
  return { path, file, bytes: reading.kind === 'sheet' ? new TextEncoder().encode(reading.csv) : bytes };
}
