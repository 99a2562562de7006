import { applyFormationBook } from '../ingest/formation/apply-formation-book.ts';
import type { FormationBook } from '../ingest/formation/formation-schema.ts';
import type { Profile } from '../ingest/profile.ts';
import { type OwnOrForeign, readOwnOrForeign } from '../ingest/read-own-or-foreign.ts';
import type { SheetOptions, SheetReading } from '../ingest/read-sheet.ts';
import { checkAcross } from '../ingest/snap-checks.ts';
import { checkSpellingsAcross } from '../ingest/spelling-checks.ts';
import { loadProfileSchema } from './late-schemas.ts';
import { readSettings } from './read-settings.ts';
import type { FoundFile, SeasonFolder } from './season-folder.ts';

/** A sheet's file with what was read from it. */
export interface NamedReading {
  readonly file: string;
  readonly reading: SheetReading;
}

/** The sheets of a season, by what they are for. */
export interface SeasonSheets {
  readonly opponent: readonly NamedReading[];
  readonly archive: readonly NamedReading[];
  readonly ours: readonly NamedReading[];
}

/** Reads every sheet of a season through its profile; a snap that stands in two of them counts once. */
export async function readSeasonSheets(folder: SeasonFolder, book: FormationBook | null): Promise<SeasonSheets> {
  const profile = await readSettings(folder.profileFile, loadProfileSchema);
  const archiveProfile = (await readSettings(folder.archiveProfileFile, loadProfileSchema)) ?? profile;
  const ownProfile = await readSettings(folder.ownProfileFile, loadProfileSchema);
  return withSpellings({
    opponent: opponentSheets(folder, { profile, book }),
    archive: booked(
      readOnce([
        ...sheetsOf(folder.archive, sheetOptions('opponent', archiveProfile)),
        ...sheetsOf(folder.earlierWeeks, sheetOptions('opponent', profile)),
      ]),
      book,
    ),
    ours: readOnce(sheetsOf(folder.ownFilm, sheetOptions('own', ownProfile))),
  });
}

/** Reads the opponent's sheets alone. */
export async function readOpponentSheets(
  folder: SeasonFolder,
  book: FormationBook | null,
): Promise<readonly NamedReading[]> {
  return opponentSheets(folder, { profile: await readSettings(folder.profileFile, loadProfileSchema), book });
}

interface SheetHelps {
  readonly profile: Profile | null;
  readonly book: FormationBook | null;
}

function opponentSheets(folder: SeasonFolder, { profile, book }: SheetHelps): readonly NamedReading[] {
  return booked(readOnce(sheetsOf(folder.opponent, sheetOptions('opponent', profile))), book);
}

/** The sheets with a warning for every word that another file of the same kind writes in another way. */
function withSpellings({ opponent, archive, ours }: SeasonSheets): SeasonSheets {
  const scouted = [...opponent, ...archive].map(({ reading }) => reading.chart);
  const problems = [
    ...checkSpellingsAcross(scouted),
    ...checkSpellingsAcross(ours.map(({ reading }) => reading.chart)),
  ];
  if (problems.length === 0) return { opponent, archive, ours };
  const added = ({ file, reading }: NamedReading): NamedReading => ({
    file,
    reading: { ...reading, problems: [...reading.problems, ...problems.filter((problem) => problem.file === file)] },
  });
  return { opponent: opponent.map(added), archive: archive.map(added), ours: ours.map(added) };
}

/** The sheets with what the formation book knows of their formations. */
function booked(readings: readonly NamedReading[], book: FormationBook | null): readonly NamedReading[] {
  if (!book) return readings;
  return readings.map(({ file, reading }) => {
    const { chart, problems } = applyFormationBook(reading.chart, book);
    return { file, reading: { ...reading, chart, problems: [...reading.problems, ...problems] } };
  });
}

function sheetOptions(kind: SheetOptions['kind'], profile: Profile | null): OwnOrForeign {
  return { kind, profile };
}

/** A file with how it is to be read. */
interface SheetToRead {
  readonly found: FoundFile;
  readonly options: OwnOrForeign;
}

function sheetsOf(files: readonly FoundFile[], options: OwnOrForeign): SheetToRead[] {
  return files.map((found) => ({ found, options }));
}

/** SeasonSheets in which every snap counts once: a file that repeats snaps of an earlier one is read without them. */
function readOnce(sheets: readonly SheetToRead[]): NamedReading[] {
  const readings = sheets.map(readOneSheet);
  const repeats = checkAcross(readings.map(({ reading }) => reading.chart));
  return sheets.map((sheet, i) => {
    const { file } = sheet.found;
    const leaveOut = new Map(repeats.filter((fault) => fault.file === file).map((fault) => [fault.row, fault]));
    const options = { ...sheet.options, leaveOut };
    return leaveOut.size > 0 ? readOneSheet({ ...sheet, options }) : (readings[i] ?? readOneSheet(sheet));
  });
}

function readOneSheet({ found, options }: SheetToRead): NamedReading {
  return { file: found.file, reading: readOwnOrForeign(found, options) };
}
