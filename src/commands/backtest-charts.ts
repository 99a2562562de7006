import { readdir, stat } from 'node:fs/promises';
import { basename, dirname, resolve } from 'node:path';
import { type Film, filterSnaps, joinFilms, textAt } from '../game/film.ts';
import { type SituationCuts, weekSettingsSchema } from '../game/week-settings.ts';
import { type Profile, profileSchema } from '../ingest/profile.ts';
import { readSheet } from '../ingest/read-sheet.ts';
import { describeProblem, type RowProblem } from '../ingest/row-problem.ts';
import { checkAcross } from '../ingest/snap-checks.ts';
import { readYamlQuickly } from '../ingest/yaml-file-quick.ts';
import { withOffense } from '../pressure/plan/name-offense.ts';
import { readWeek } from '../season/read-week.ts';
import { type FoundFile, readOne, readSeasonFolder, readSheets } from '../season/season-folder.ts';
import { UserProblem } from '../season/user-problem.ts';
import { diskPlace, diskWeek } from './disk-season.ts';

/** The film of a backtest: every path's snaps as one chart. */
export interface BacktestCharts {
  readonly chart: Film;
  /** Number of the path each source of the chart came from. */
  readonly seasons: readonly number[];
  /** Offenses with games to be forecast; the others are archive. */
  readonly tested: ReadonlySet<string>;
  /** Cut-offs of the first week given, or the defaults. */
  readonly cuts: SituationCuts;
  readonly problems: readonly RowProblem[];
  /** Rows kept out of the numbers. */
  readonly faults: number;
  /** Whether a path was a week folder. */
  readonly weeks: boolean;
  /** Tallies of other offenses that were found and are in no backtest. */
  readonly tallies: number;
}

/**
 * Reads every path: a week folder (its opponent is tested, its archive found as the report finds it), a folder of sheets
 * or a sheet (all offenses in it are tested). A row that two paths share counts once.
 *
 * @param profile - file that says how sheets outside week folders are read
 * @throws UserProblem when a path is not there or a sheet, week or profile cannot be read
 */
export async function readBacktestCharts(
  paths: readonly string[],
  profile: string | undefined,
): Promise<BacktestCharts> {
  const reader = profile === undefined ? null : await readProfile(profile);
  const readings: PathReading[] = [];
  for (const path of paths) readings.push(await readPath(path, reader));
  const charts = onceOnly([...readings.map(({ tested }) => tested), ...readings.map(({ archive }) => archive)]);
  const numbers = [...readings, ...readings].flatMap((_, i) => {
    return charts[i]?.sources.map(() => i % readings.length) ?? [];
  });
  const names = charts.slice(0, readings.length).flatMap((chart) => offensesOf(chart));
  return {
    chart: joinFilms(charts),
    seasons: numbers,
    tested: new Set(names),
    cuts: readings.find(({ cuts }) => cuts !== null)?.cuts ?? weekSettingsSchema.parse({ opponent: '-' }).situations,
    problems: readings.flatMap(({ problems }) => problems),
    faults: readings.reduce((sum, { faults }) => sum + faults, 0),
    weeks: readings.some(({ cuts }) => cuts !== null),
    tallies: readings.reduce((sum, { tallies }) => sum + tallies, 0),
  };
}

/** Sheets of a folder that chart other offenses: not our own film, tonight's snaps or tallies. */
const OTHER_OFFENSES = /^(?!ours|live)(?!.*counts)/i;

interface PathReading {
  readonly tested: Film;
  readonly archive: Film;
  /** Null for anything but a week folder. */
  readonly cuts: SituationCuts | null;
  /** Tallies of other offenses beside the film. */
  readonly tallies: number;
  readonly problems: readonly RowProblem[];
  readonly faults: number;
}

async function readPath(path: string, profile: Profile | null): Promise<PathReading> {
  const about = await stat(path).catch(() => null);
  if (about === null) throw new UserProblem('usage', `there is no file or folder ${path}`);
  if (!about.isDirectory()) return readLoose(path, await sheetOf(path), profile);
  const names = await readdir(path);
  if (names.some((name) => /^opponent/i.test(name))) return readWeekFolder(path);
  return readLoose(path, await readSheets(diskPlace(path), '', OTHER_OFFENSES), profile);
}

async function readWeekFolder(path: string): Promise<PathReading> {
  const { week, found } = await readWeek(await readSeasonFolder(diskWeek(path)));
  const { chart, archive, counts, settings, opponent, faults } = week;
  const { offense: _, ...others } = chart.columns;
  return {
    tested: withOffense({ ...chart, columns: others }, opponent),
    archive: archive ?? joinFilms([]),
    cuts: settings.situations,
    tallies: counts.length,
    problems: found.problems,
    faults,
  };
}

function readLoose(path: string, files: readonly FoundFile[], profile: Profile | null): PathReading {
  if (files.length === 0) throw new UserProblem('usage', `${path} holds no sheet of snaps (.csv, .tsv, .txt, .xlsx)`);
  const readings = files.map((file) => readSheet(file, profile ? { kind: 'opponent', profile } : { kind: 'opponent' }));
  const charts = readings.map(({ chart }, i) => withOffense(chart, files[i]?.file ?? path));
  const repeats = checkAcross(charts);
  const repeated = new Set(repeats.map(({ file, row }) => placeKey(file, row)));
  const problems = [...readings.flatMap((reading) => reading.problems), ...repeats];
  const joined = joinFilms(charts);
  return {
    tested: filterSnaps(joined, (i) => !repeated.has(placeKey(sourceAt(joined, i), joined.rowOf[i]))),
    archive: joinFilms([]),
    cuts: null,
    tallies: 0,
    problems,
    faults: readings.reduce((sum, { rejected }) => sum + rejected.length, repeats.length),
  };
}

function sheetOf(path: string): Promise<FoundFile[]> {
  const name = basename(path).replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return readSheets(diskPlace(dirname(path)), '', new RegExp(`^${name}$`));
}

async function readProfile(path: string): Promise<Profile> {
  const found = await readOne(diskPlace(dirname(path)), '', basename(path));
  if (found === null) throw new UserProblem('usage', `there is no profile ${path}`);
  const reading = await readYamlQuickly(found.bytes, profileSchema, found.file);
  if (reading.kind === 'value') return reading.value;
  throw new UserProblem('faults', reading.problems.map(describeProblem).join('\n'));
}

/** The charts without rows that one before them holds. */
function onceOnly(charts: readonly Film[]): readonly Film[] {
  const seen = new Set<string>();
  return charts.map((chart) => {
    const places = chart.sources.map((source) => resolve(source));
    return filterSnaps(chart, (i) => {
      const key = placeKey(places[chart.sourceOf[i] as number] ?? '', chart.rowOf[i]);
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    });
  });
}

function sourceAt(chart: Film, index: number): string {
  return chart.sources[chart.sourceOf[index] as number] ?? '';
}

function placeKey(file: string, row: number | undefined): string {
  return `${row ?? 0} ${file}`;
}

function offensesOf(chart: Film): string[] {
  const names = new Set<string>();
  for (let i = 0; i < chart.size; i++) names.add(textAt(chart, 'offense', i) ?? '');
  return [...names];
}
