import { groupBy } from '../../game/by-word.ts';
import { type CrossCount, type Crossing, crossByGame, crossByOffense } from '../others/cross-count.ts';
import type { OffenseGame } from '../snap/offense-game.ts';
import { type GroupDue, groupDue } from './due.ts';
import { FACED, type FacedFilm, gamesFor } from './faced-film.ts';
import { type LeagueShift, leagueShift, noShift } from './league-shift.ts';
import { countedPattern, PATTERN_ROWS, type Pattern, patternRow } from './pattern.ts';
import type { PressuredSplit } from './pressured-result.ts';
import type { PressuredDefinition } from './pressured-target.ts';

/** A question and what the snaps are split by. */
export interface Asked {
  readonly by: PressuredSplit['by'];
  readonly definition: PressuredDefinition;
}

/** What an offense showed in each group, game by game, and what was due. */
export interface OwnCounts {
  readonly games: readonly CrossCount[];
  readonly due: GroupDue;
}

/** What the archive's offenses showed in each group, one by one and by what factors together. */
export interface OtherCounts {
  readonly offenses: readonly CrossCount[];
  readonly shift: LeagueShift;
}

/** Codes of a chart for a question. */
export type AskedCrossing = Crossing & { readonly situationOf: Uint8Array };

/** The crossing of what they faced with a question. */
export function askedCrossing(film: FacedFilm, { by, definition }: Asked): AskedCrossing {
  return {
    groupOf: film.faced[by],
    groups: FACED[by].length,
    classOf: film.classOf(definition),
    classes: definition.classes.length,
    situationOf: film.situationOf,
  };
}

/** The opponent's counts. @param pattern - what to expect in each situation */
export function ownCounts(film: FacedFilm, asked: Asked, pattern: Pattern): OwnCounts {
  const crossing = askedCrossing(film, asked);
  const games = gamesFor(film, asked.by, asked.definition);
  return { games: crossByGame(games, crossing), due: groupDue(crossing, rowsOf(games), pattern) };
}

/** The archive's counts, each offense against its own level; none without an archive. */
export function otherCounts(film: FacedFilm | null, asked: Asked): OtherCounts {
  const size = { groups: FACED[asked.by].length, classes: asked.definition.classes.length };
  if (film === null) return { offenses: [], shift: noShift(size) };
  const crossing = askedCrossing(film, asked);
  const games = gamesFor(film, asked.by, asked.definition);
  const pattern = archivePattern(crossing, rowsOf(games));
  const dues = byOffense(games).map((rows) => groupDue(crossing, rows, pattern));
  return { offenses: crossByOffense(games, crossing), shift: leagueShift(dues, size) };
}

/** What all offenses of an archive do in each situation. */
export function archivePattern({ classOf, classes, situationOf }: AskedCrossing, rows: readonly number[]): Pattern {
  const counts = new Float64Array(PATTERN_ROWS * classes);
  for (const row of rows) {
    const k = classOf[row] as number;
    const place = patternRow(situationOf[row] as number) * classes + k;
    if (k < classes) counts[place] = (counts[place] as number) + 1;
  }
  return countedPattern(counts, classes);
}

/** The snaps of each offense. */
export function byOffense(games: readonly OffenseGame[]): readonly (readonly number[])[] {
  return [...groupBy(games, ({ offense }) => offense).values()].map((own) => own.flatMap(({ rows }) => [...rows]));
}

/** The snaps of some games. */
export function rowsOf(games: readonly OffenseGame[]): readonly number[] {
  return games.flatMap(({ rows }) => rows);
}
