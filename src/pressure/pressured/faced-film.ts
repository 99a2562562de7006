import type { Film } from '../../game/film.ts';
import { COVERAGES_FACED } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { type FilmGames, filmGames } from '../others/cross-count.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { OffenseGame } from '../snap/offense-game.ts';
import { PASS, runOrPassCodes } from '../snap/run-or-pass.ts';
import { coverageCodes, RUSH_GROUPS, rushGroupCodes } from '../snap/rush-group.ts';
import { situationCodes } from '../snap/situation.ts';
import type { PressuredSplit } from './pressured-result.ts';
import { PRESSURED_DEFINITIONS, type PressuredDefinition } from './pressured-target.ts';

/** What the snaps of a chart may be split by, and into what. */
export const FACED: Readonly<Record<PressuredSplit['by'], readonly string[]>> = {
  rushers: RUSH_GROUPS,
  coverage: COVERAGES_FACED,
};

/** A chart read for what they do when pressured: every code worked out once. */
export interface FacedFilm extends FilmGames {
  readonly situationOf: Uint8Array;
  readonly faced: Readonly<Record<PressuredSplit['by'], Uint8Array>>;
  /** The codes of a question. */
  readonly classOf: (definition: PressuredDefinition) => Uint8Array;
  /** Games in which the split was charted on enough runs to speak of runs. */
  readonly gamesWithRuns: Readonly<Record<PressuredSplit['by'], readonly OffenseGame[]>>;
}

/** Reads a chart; of no chart, null. */
export function facedFilm(chart: Film | null, cuts: SituationCuts): FacedFilm | null {
  const film = filmGames(chart);
  if (film === null) return null;
  const runOrPass = runOrPassCodes(film.film);
  const faced = { rushers: rushGroupCodes(film.film), coverage: coverageCodes(film.film) };
  const classes = new Map(PRESSURED_DEFINITIONS.map((one) => [one, one.codes(film.film, cuts)]));
  const withRuns = (by: PressuredSplit['by']) => film.games.filter((game) => chartsRuns(game, faced[by], runOrPass));
  return {
    ...film,
    situationOf: situationCodes(film.film, cuts),
    faced,
    classOf: (definition) => classes.get(definition) as Uint8Array,
    gamesWithRuns: { rushers: withRuns('rushers'), coverage: withRuns('coverage') },
  };
}

/** Runs of a game with the split charted that make its runs count, as a share; judgment, as for passes separated. */
const LEAST_CHARTED = 0.5;

/** Rushers are often charted on passes alone: the runs among the snaps with a rush would then be next to none. */
function chartsRuns({ rows }: OffenseGame, faced: Uint8Array, runOrPass: Uint8Array): boolean {
  let [runs, charted] = [0, 0];
  for (const row of rows) {
    if (runOrPass[row] === NOT_KNOWN || runOrPass[row] === PASS) continue;
    runs++;
    charted += Number(faced[row] !== NOT_KNOWN);
  }
  return runs > 0 && charted >= LEAST_CHARTED * runs;
}

/** The games that count for a question. */
export function gamesFor(film: FacedFilm, by: PressuredSplit['by'], definition: PressuredDefinition) {
  return definition.ofRuns ? film.gamesWithRuns[by] : film.games;
}
