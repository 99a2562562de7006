import type { CallLibrary } from '../../game/call-library.ts';
import type { Film } from '../../game/film.ts';
import { plainName } from '../../game/plain-name.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import { share } from '../../stats/share.ts';
import type { ScoreChapter } from '../score/score-result.ts';
import { snapCells } from '../snap/snap-cells.ts';
import { lookChanges } from './check-with-me.ts';
import { guessRates } from './guess.ts';
import { coverageClues, pairingsOf } from './pairings.ts';
import { predictabilityOf } from './predictability.ts';
import { pressureRates } from './pressure-rate.ts';
import { remedyOf } from './remedy.ts';
import type { OwnFilmChapter, Remedy } from './result.ts';
import { rotationsOf } from './rotation.ts';
import { pressureRuns } from './runs.ts';
import { seenBefore } from './seen.ts';
import { earlyShows } from './shown-early.ts';
import { type OwnSnap, ownSnaps } from './snaps.ts';
import { ownTells } from './tells.ts';

/** What our own film is read with; without a library there is no remedy to name, without scores no cost. */
export interface OwnFilmInput {
  readonly ownFilm: Film;
  readonly library: CallLibrary | null;
  readonly settings: WeekSettings;
  readonly scores: ScoreChapter | null;
  readonly seed: number;
}

/**
 * What our own film gives away: the coverage behind each path, turn, family and side, how often a reader guesses it,
 * where we send pressure and what it follows, what showing early costs, our tells, and what would mend it.
 */
export function ownFilmChapter(input: OwnFilmInput): OwnFilmChapter {
  const { ownFilm, library, settings, seed } = input;
  const snaps = ownSnaps(ownFilm, settings.situations, library);
  const cells = snapCells(ownFilm, settings.situations);
  const seen = seenBefore(ownFilm, settings.situations);
  const guesses = guessRates(snaps, cells);
  const { rates, splits } = pressureRates(snaps, seen, seed);
  return {
    snaps: snaps.length,
    games: new Set(snaps.map(({ game }) => game)).size,
    pressures: shareOf(snaps, ({ pressure }) => pressure),
    pairings: pairingsOf(snaps),
    clues: coverageClues(snaps, seed),
    predictability: predictabilityOf(snaps, seed),
    guesses,
    pressureRates: rates,
    pressureSplits: splits,
    runsTest: pressureRuns(snaps),
    rotation: rotationsOf(snaps),
    shownEarly: shareOf(snaps, ({ shownEarly }) => shownEarly),
    changedAfterLook: shareOf(
      snaps.filter(({ shownEarly }) => shownEarly),
      ({ changed }) => changed,
    ),
    lookChanges: lookChanges(snaps),
    earlyShows: earlyShows(snaps, seed),
    ...ownTells(snaps, cells, seen),
    remedy: remedyOf({ ...input, snaps, guesses }),
    onPlan: null,
  };
}

/** The remedy that names only paths carried this week; what the menu kept to because of our film stays as it was. */
export function carriedRemedy(
  { ownFilm, library, settings, scores }: OwnFilmInput,
  { guesses, remedy }: OwnFilmChapter,
  paths: readonly string[],
): Remedy {
  const snaps = ownSnaps(ownFilm, settings.situations, library);
  const carried = new Set(paths.map(plainName));
  return { ...remedyOf({ snaps, guesses, library, settings, scores, carried }), habits: remedy.habits };
}

function shareOf(snaps: readonly OwnSnap[], of: (snap: OwnSnap) => boolean | undefined) {
  const charted = snaps.map(of).filter((is) => is !== undefined);
  return share(charted.filter((is) => is).length, charted.length);
}
