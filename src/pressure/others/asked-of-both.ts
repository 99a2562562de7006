import { countBy, mostFirst } from '../../game/by-word.ts';
import type { ColumnName } from '../../game/columns.ts';
import { type Film, rowsOf, textAt } from '../../game/film.ts';
import { type Share, share } from '../../stats/share.ts';
import { codesBySnap } from '../snap/codes-by-snap.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { type AgainstOthers, againstOthers, sumOf } from './against-others.ts';
import {
  type CrossCount,
  crossByGame,
  crossByOffense,
  type FilmGames,
  filmGames,
  type GameCount,
  gameCells,
  offenseCells,
} from './cross-count.ts';

/** The opponent's chart and the archive's, each with its games. */
export interface BothFilms {
  readonly own: FilmGames;
  readonly archive: FilmGames | null;
}

/** Reads both charts; null where the opponent has no snap. */
export function bothFilms(chart: Film, archive: Film | null): BothFilms | null {
  const own = filmGames(chart);
  return own && { own, archive: filmGames(archive) };
}

/** A question with its classes, as a code for every snap of both charts; 255 where it was not charted. */
export interface AskedOfBoth {
  readonly classes: readonly string[];
  readonly own: Uint8Array;
  /** Null without an archive. */
  readonly archive: Uint8Array | null;
}

/** A question with a fixed list of classes. */
export function askBoth(
  both: BothFilms,
  classes: readonly string[],
  codesOf: (chart: Film) => Uint8Array,
): AskedOfBoth {
  return { classes, own: codesOf(both.own.film), archive: both.archive && codesOf(both.archive.film) };
}

/** Most words one column may have as classes: codes are bytes, and 255 is taken. */
const MOST_WORDS = 250;

/**
 * A question with the words the opponent's chart uses in a column as its classes, the most frequent first; a word of the
 * archive that is none of them counts as something else, under the last class `''`.
 */
export function askWords(both: BothFilms, column: ColumnName): AskedOfBoth {
  const { film } = both.own;
  const words = mostFirst(countBy(rowsOf(film), (row) => textAt(film, column, row))).map(([word]) => word);
  const classes = [...words.slice(0, MOST_WORDS), ''];
  const places = new Map(classes.map((word, place) => [word, place]));
  return askBoth(both, classes, (chart) =>
    codesBySnap(chart.size, (i) => {
      const word = textAt(chart, column, i);
      return word === undefined ? NOT_KNOWN : (places.get(word) ?? classes.length - 1);
    }),
  );
}

/** One question for all snaps on which another is asked: the group that every snap is in. */
export function everySnap(both: BothFilms): AskedOfBoth {
  return askBoth(both, ['all'], (chart) => new Uint8Array(chart.size));
}

/** A class in a group: the opponent's count, game by game, and the archive's offenses. */
export interface ComparedCell {
  readonly film: Share;
  readonly games: readonly GameCount[];
  readonly others: AgainstOthers | null;
}

/** Two questions counted against one another in both charts. */
export interface CrossOfBoth {
  readonly games: readonly CrossCount[];
  readonly offenses: readonly CrossCount[];
}

/** Counts a question within the groups of another, in one pass over each chart. */
export function crossBoth(both: BothFilms, group: AskedOfBoth, asked: AskedOfBoth): CrossOfBoth {
  const sizes = { groups: group.classes.length, classes: asked.classes.length };
  const own = { groupOf: group.own, classOf: asked.own, ...sizes };
  const { archive } = both;
  return {
    games: crossByGame(both.own.games, own),
    offenses:
      archive && group.archive && asked.archive
        ? crossByOffense(archive.games, { groupOf: group.archive, classOf: asked.archive, ...sizes })
        : [],
  };
}

/** One cell of a cross, and what was asked there. */
export interface CellPlace {
  readonly group: number;
  readonly k: number;
  readonly question: string;
}

/** One cell of a cross, compared with the archive. */
export function comparedCell({ games, offenses }: CrossOfBoth, { group, k, question }: CellPlace): ComparedCell {
  const own = gameCells(games, group, k);
  const { count, trials } = sumOf(own);
  const others = againstOthers({ games: own, question }, offenseCells(offenses, group, k));
  return { film: share(count, trials), games: own, others };
}
