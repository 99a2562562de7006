import type { CallLibrary } from '../../ingest/call-library.ts';
import { type Chart, textAt } from '../../ingest/chart.ts';
import type { WeekSettings } from '../../ingest/week-settings.ts';
import { share } from '../../stats/share.ts';
import type { ScoreChapter } from '../score/score-result.ts';
import { guessRates } from './guess.ts';
import { pairingsOf } from './pairings.ts';
import { predictabilityOf } from './predictability.ts';
import { pressureRates } from './pressure-rate.ts';
import { remedyOf } from './remedy.ts';
import type { OwnFilmChapter } from './result.ts';
import { rotationsOf } from './rotation.ts';
import { pressureRuns } from './runs.ts';
import { type OwnSnap, ownSnaps } from './snaps.ts';
import { ownTells } from './tells.ts';

/** What our own film is read with; without a library there is no remedy to name, without scores no cost. */
export interface OwnFilmInput {
  readonly ownFilm: Chart;
  readonly library: CallLibrary | null;
  readonly settings: WeekSettings;
  readonly scores: ScoreChapter | null;
  readonly seed: number;
}

/** What our own film gives away: coverage given path, how often a reader guesses it, where we send pressure. */
export function ownFilmChapter(input: OwnFilmInput): OwnFilmChapter {
  const { ownFilm, settings, seed } = input;
  const snaps = ownSnaps(ownFilm, settings.situations);
  const pairings = pairingsOf(snaps);
  const guesses = guessRates(snaps, seed);
  return {
    snaps: snaps.length,
    games: new Set(snaps.map(({ game }) => game)).size,
    pairings,
    predictability: predictabilityOf(snaps, guesses, seed),
    guesses,
    pressureRates: pressureRates(snaps),
    runsTest: pressureRuns(snaps),
    rotation: rotationsOf(snaps),
    shownEarly: yesShare(ownFilm, snaps, 'shown_early'),
    changedAfterLook: changedAfterLook(ownFilm, snaps),
    tells: ownTells(snaps),
    remedy: remedyOf({ ...input, snaps, pairings, guesses }),
  };
}

function yesShare(film: Chart, snaps: readonly OwnSnap[], column: 'shown_early' | 'checked') {
  const told = snaps.map(({ index }) => textAt(film, column, index)).filter((word) => word !== undefined);
  return share(told.filter((word) => word === 'yes').length, told.length);
}

/** Of the snaps on which we showed early and the change was charted: how often they changed the play. */
function changedAfterLook(film: Chart, snaps: readonly OwnSnap[]) {
  return yesShare(
    film,
    snaps.filter(({ index }) => textAt(film, 'shown_early', index) === 'yes'),
    'checked',
  );
}
