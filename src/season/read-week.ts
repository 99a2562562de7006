import type { CallLibrary } from '../game/call-library.ts';
import { type Film, filterSnaps, joinFilms, textAt } from '../game/film.ts';
import { defenseSchema } from '../game/short-form/defense-schema.ts';
import { UNNAMED_OPPONENT, type WeekSettings, weekSettingsSchema } from '../game/week-settings.ts';
import { type UnknownFormation, unknownFormations } from '../ingest/formation/unknown-formations.ts';
import { describeGroup, groupProblems, type RowProblem } from '../ingest/row-problem.ts';
import type { CountRow } from '../pressure/forecast/counts/count-row.ts';
import { completeOwnFilm, joinOwnFilm, type UnknownCall, unknownCalls } from '../pressure/plan/complete-own-film.ts';
import { filmChapter } from '../pressure/plan/film-chapter.ts';
import { offenseOf, withOffense } from '../pressure/plan/name-offense.ts';
import type { FilmChapter } from '../pressure/plan/week-plan.ts';
import { inOrderOfPlay } from '../pressure/snap/game-order.ts';
import { offenseGames } from '../pressure/snap/offense-game.ts';
import type { SoundnessFault } from '../pressure/soundness/fault.ts';
import { checkLibrary } from '../pressure/soundness/soundness.ts';
import { loadFormationSchema } from './late-schemas.ts';
import { menuNameProblems } from './menu-names.ts';
import { noSnaps } from './no-snaps.ts';
import { readCountFiles } from './read-counts.ts';
import { theirSnaps } from './read-opponent-film.ts';
import { type NamedReading, readSeasonSheets, type SeasonSheets } from './read-season-sheets.ts';
import { readSettings } from './read-settings.ts';
import type { RejectedInFile } from './rejects.ts';
import type { SeasonFolder } from './season-folder.ts';
import { leftOutTallyWords } from './tally-words.ts';
import { sameTeam, teamSlips } from './team-slips.ts';

/** A week as the plan needs it. Archive and own film are put together when asked for. */
export interface WeekInputs {
  readonly chart: Film;
  readonly archive: Film | null;
  /** Tallies of other offenses. */
  readonly counts: readonly CountRow[];
  readonly ownFilm: Film | null;
  readonly library: CallLibrary | null;
  readonly settings: WeekSettings;
  readonly film: FilmChapter;
  readonly opponent: string;
  /** Formation names of the opponent that the formation book does not have. */
  readonly unknownFormations: readonly UnknownFormation[];
  /** Call names of our own film that the library does not have, in words. */
  readonly ownProblems: readonly string[];
  /** Files and offenses with names close to one that is read, each with what to do about it. */
  readonly unread: readonly string[];
  /** Calls that week.yaml names and that cannot be what it says. */
  readonly menuProblems: readonly string[];
  /** What makes our calls unsound, and what they give up on purpose. */
  readonly soundness: readonly SoundnessFault[];
  /** Tallies that were left out, and why. */
  readonly tallyNotes: readonly string[];
  /** Problems of a whole file, which no row can carry. */
  readonly fileFaults: number;
  /** Rows kept out of the numbers. */
  readonly faults: number;
}

/** What is wrong with the rows of a week's sheets; apart from the week, for it may be far larger and is needed less long. */
export interface RowFindings {
  readonly problems: readonly RowProblem[];
  readonly rejected: readonly RejectedInFile[];
}

/** A week with what was found on the way. */
export interface WeekReading {
  readonly week: WeekInputs;
  readonly found: RowFindings;
}

/** Problems a report names before it only counts them. */
const NAMED_PROBLEMS = 12;

/**
 * Turns the files of a season into charts, library and settings. Faulty rows are data; faulty settings stop the run.
 *
 * @throws UserProblem when a YAML file has faults or no snap of the opponent is usable
 */
export async function readWeek(folder: SeasonFolder): Promise<WeekReading> {
  const library = await readSettings(folder.libraryFile, () => defenseSchema);
  const book = await readSettings(folder.formationFile, loadFormationSchema);
  const sheets = await readSeasonSheets(folder, book);
  const all = joinFilms(sheets.opponent.map(({ reading }) => reading.chart));
  const { settings, notes } = await settingsOf(folder, all);
  const { opponent } = settings;
  const readings = [...sheets.opponent, ...sheets.archive, ...sheets.ours];
  const problems = readings.flatMap(({ reading }) => reading.problems);
  const chart = inOrderOfPlay(theirSnaps(all, opponent));
  const unread = [...notes, ...slipsIn(sheets, opponent), ...folder.unread];
  const lines = problemLines(problems);
  if (chart.size === 0) throw noSnaps(folder, { opponent, film: sheets.opponent, rest: [...lines, ...unread] });
  const { rejected, faults } = rejectedOf(readings);
  const { counts, tallyNotes } = talliesOf(folder, sheets, opponent);
  const { own, ownProblems } = ownFilmOf(sheets, library);
  const soundness = library ? checkLibrary(library) : [];
  const menuProblems = menuNameProblems({ menu: settings.menu, library, soundness });
  const film = filmChapter(chart, {
    faults,
    warnings: problems.filter(({ severity }) => severity === 'warning').length,
    problems: [...menuProblems, ...unread, ...tallyNotes, ...lines, ...ownProblems],
    invented: settings.invented,
    has: {
      archive: holdsOthers(sheets.archive, opponent) || counts.length > 0,
      ownFilm: own !== null,
      library: !!library,
      weekFile: !!folder.weekFile,
    },
  });
  const charted = {
    unknownFormations: unknownFormations(chart, book),
    ...{ unread, tallyNotes, ownProblems, soundness, menuProblems },
    faults,
    fileFaults: countFileFaults(problems),
  };
  const week = withLateFilm(
    { chart, counts, library, settings, film, opponent, ...charted },
    { archive: lateArchive(sheets.archive, opponent), ownFilm: lateOwnFilm(own, library) },
  );
  return { week, found: { problems, rejected } };
}

/**
 * The week's settings; without a week.yaml, or with the template's opponent still in it, the defaults or what it says,
 * against the offense with most snaps.
 */
async function settingsOf(
  { weekFile }: SeasonFolder,
  film: Film,
): Promise<{ readonly settings: WeekSettings; readonly notes: readonly string[] }> {
  const read = await readSettings(weekFile, () => weekSettingsSchema);
  if (read !== null && read.opponent !== UNNAMED_OPPONENT) return { settings: read, notes: [] };
  const opponent = offenseOf(film);
  if (read === null) return { settings: weekSettingsSchema.parse({ opponent }), notes: [] };
  const note = `${weekFile?.file} still names the opponent "${UNNAMED_OPPONENT}"; type their name. Until then they are called ${opponent}`;
  return { settings: { ...read, opponent }, notes: [note] };
}

function rejectedOf(readings: readonly NamedReading[]): Pick<RowFindings, 'rejected'> & Pick<WeekInputs, 'faults'> {
  const rejected = readings.map(({ file, reading }) => ({ file, rows: reading.rejected }));
  return { rejected, faults: rejected.reduce((sum, { rows }) => sum + rows.length, 0) };
}

function countFileFaults(problems: readonly RowProblem[]): number {
  return problems.filter(({ severity, row }) => severity === 'fault' && row <= 1).length;
}

type LateFilm = Pick<WeekInputs, 'archive' | 'ownFilm'>;

function withLateFilm(
  week: Omit<WeekInputs, keyof LateFilm>,
  late: { readonly [Part in keyof LateFilm]: () => LateFilm[Part] },
): WeekInputs {
  return {
    ...week,
    get archive() {
      return late.archive();
    },
    get ownFilm() {
      return late.ownFilm();
    },
  };
}

/** Functions of their own, so that what is asked for keeps alive nothing else that was read. */
function lateArchive(readings: readonly NamedReading[], opponent: string): () => Film | null {
  const charts = readings.map(({ file, reading }) => ({ file, chart: reading.chart }));
  return whenAsked(() => archiveOf(charts, opponent));
}

function ownFilmOf({ ours }: SeasonSheets, library: CallLibrary | null) {
  const own = joinOwnFilm(ours.map(({ reading }) => reading.chart));
  return { own, ownProblems: own && library ? unknownCallLines(unknownCalls(own, library)) : [] };
}

function lateOwnFilm(own: Film | null, library: CallLibrary | null): () => Film | null {
  return whenAsked(() => (own && library ? completeOwnFilm(own, library).chart : own));
}

/**
 * What a piece of work gives, done when it is first asked for and only once: a check never asks for the base rates. Once
 * done it holds on to nothing that the work was done with, which for a long archive is a second one.
 */
function whenAsked<T>(work: () => T): () => T {
  let state: { readonly work: () => T } | { readonly value: T } = { work };
  return () => {
    if ('work' in state) state = { value: state.work() };
    return state.value;
  };
}

function slipsIn({ opponent: film, archive }: SeasonSheets, opponent: string): string[] {
  return teamSlips(
    [...film, ...archive].map(({ reading }) => reading.chart),
    opponent,
  );
}

/** Other offenses' snaps; the opponent's own never count twice. */
function archiveOf(sheets: readonly { readonly file: string; readonly chart: Film }[], opponent: string): Film | null {
  if (sheets.length === 0) return null;
  const joined = joinFilms(sheets.map(({ file, chart }) => withOffense(chart, file)));
  const others = filterSnaps(joined, (i) => !sameTeam(textAt(joined, 'offense', i) ?? '', opponent));
  return others.size === 0 ? null : others;
}

/** Whether {@link archiveOf} would find a snap: the first of another offense, or of none named, tells. */
function holdsOthers(readings: readonly NamedReading[], opponent: string): boolean {
  return readings.some(({ file, reading: { chart } }) => {
    for (let i = 0; i < chart.size; i++) if (!sameTeam(textAt(chart, 'offense', i) ?? file, opponent)) return true;
    return false;
  });
}

function talliesOf(
  folder: SeasonFolder,
  { archive }: SeasonSheets,
  opponent: string,
): Pick<WeekInputs, 'counts' | 'tallyNotes'> {
  const { rows, leftOut } = readCountFiles(folder.counts, () => ({ opponent, others: offensesIn(archive) }));
  return { counts: rows, tallyNotes: leftOut.map(leftOutTallyWords) };
}

/** The offenses on sheets of film; a sheet that names none is called by its file. */
function offensesIn(readings: readonly NamedReading[]): ReadonlySet<string> {
  const charts = readings.map(({ file, reading }) => withOffense(reading.chart, file));
  return new Set(charts.flatMap((chart) => offenseGames(chart).map(({ offense }) => offense)));
}

function problemLines(problems: readonly RowProblem[]): string[] {
  const grouped = groupProblems(problems, NAMED_PROBLEMS);
  const rest =
    grouped.restProblems > 0
      ? [`… and ${grouped.restProblems} more of ${grouped.restGroups} other kinds; "pressure-plan check" lists all`]
      : [];
  return [...grouped.groups.map(describeGroup), ...rest];
}

function unknownCallLines(calls: readonly UnknownCall[]): string[] {
  return calls.map(
    ({ call, snaps }) => `our film names the call "${call}" on ${snaps} snaps, which defense.yaml does not have`,
  );
}
