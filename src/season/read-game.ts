import type { CallLibrary } from '../game/call-library.ts';
import { type Film, filterSnaps, joinFilms, textAt } from '../game/film.ts';
import { plainName } from '../game/plain-name.ts';
import type { Profile } from '../ingest/profile.ts';
import { readOwnOrForeign } from '../ingest/read-own-or-foreign.ts';
import type { SheetOptions, SheetReading } from '../ingest/read-sheet.ts';
import { describeProblems } from '../ingest/row-problem.ts';
import { completeOwnFilm, joinOwnFilm } from '../pressure/plan/complete-own-film.ts';
import { inOrderOfPlay } from '../pressure/snap/game-order.ts';
import { loadProfileSchema } from './late-schemas.ts';
import { readSettings } from './read-settings.ts';
import { type FoundFile, readOne, readSheets } from './season-folder.ts';
import type { SeasonWeek } from './store.ts';
import { unreadFiles } from './unread-files.ts';
import { UserProblem } from './user-problem.ts';

/** The finished game of a week as it was charted. */
export interface GameReading {
  /** The opponent's snaps. */
  readonly game: Film;
  /** Our calls with what the library says of them; null when the week holds no ours….csv. */
  readonly ours: Film | null;
  /** Rows kept out of the numbers. */
  readonly faults: number;
  /** Problems in words, the first kinds named. */
  readonly named: readonly string[];
}

/** The teams of the game, and the calls we teach. */
export interface GameOf {
  readonly opponent: string;
  readonly library: CallLibrary | null;
}

/** Groups of problems named before the rest is only counted. */
const NAMED = 8;

/** Whether a file's name is that of a charted game. */
export function isGameSheet(name: string): boolean {
  return GAME.test(name) && /\.(csv|tsv|txt|xlsx)$/i.test(name);
}

const GAME = /^game/i;

/**
 * Reads game….csv and ours….csv of a week.
 *
 * @throws UserProblem when no game was charted
 */
export async function readGame(at: SeasonWeek, { opponent, library }: GameOf): Promise<GameReading> {
  const { week } = at;
  const games = await readSheets(at, week, GAME);
  if (games.length === 0)
    throw new UserProblem(
      'faults',
      [
        `${at.files.shown(week)} holds no game….csv: chart the finished game into it, with the columns of opponent.csv`,
        ...(await unreadFiles(at)),
      ].join('\n'),
    );
  const profile = (await readProfile(at, week, 'profile.yaml')) ?? (await readProfile(at, '', 'profile.yaml'));
  const ownProfile = await readProfile(at, '', 'ours-profile.yaml');
  const theirs = games.map((file) => read(file, 'opponent', profile));
  const ours = (await readSheets(at, week, /^ours/i)).map((file) => read(file, 'own', ownProfile));
  const own = joinOwnFilm(ours.map(({ chart }) => chart));
  return {
    game: inOrderOfPlay(snapsOf(joinFilms(theirs.map(({ chart }) => chart)), opponent)),
    ours: own && library ? completeOwnFilm(own, library).chart : own,
    ...problemsOf([...theirs, ...ours]),
  };
}

async function readProfile(at: SeasonWeek, folder: string, name: string): Promise<Profile | null> {
  return readSettings(await readOne(at, folder, name), loadProfileSchema);
}

function read(file: FoundFile, kind: SheetOptions['kind'], profile: Profile | null): SheetReading {
  return readOwnOrForeign(file, { kind, profile });
}

/** A sheet that names no offense is all theirs. */
function snapsOf(chart: Film, opponent: string): Film {
  return filterSnaps(chart, (i) => plainName(textAt(chart, 'offense', i) ?? opponent) === plainName(opponent));
}

function problemsOf(readings: readonly SheetReading[]): Pick<GameReading, 'faults' | 'named'> {
  const faults = readings.reduce((sum, { rejected }) => sum + rejected.length, 0);
  const problems = readings.flatMap((reading) => reading.problems);
  return { faults, named: describeProblems(problems, NAMED) };
}
