import { countBy, mostFirst } from '../../game/by-word.ts';
import type { CallLibrary } from '../../game/call-library.ts';
import { type Film, textAt } from '../../game/film.ts';
import { SITUATIONS } from '../../game/situations.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { gamesInOrder } from '../snap/game-order.ts';
import { type OutcomeKind, outcomeAt } from '../snap/outcome.ts';
import { situationCodes } from '../snap/situation.ts';
import { sentSide } from './sent-side.ts';

/** One of our own snaps as a reader of our film sees it; undefined is "not charted". */
export interface OwnSnap {
  readonly index: number;
  /** Place of the snap among all of the film, game after game as they were played. */
  readonly order: number;
  readonly game: string;
  readonly situation: string | undefined;
  readonly family: string | undefined;
  readonly path: string | undefined;
  readonly coverage: string | undefined;
  readonly rotation: string | undefined;
  /** "the field" or "the boundary": where the pressure came from. */
  readonly side: string | undefined;
  /** True when the family sends five or more; undefined when no family was charted. */
  readonly pressure: boolean | undefined;
  readonly shownEarly: boolean | undefined;
  /** The offense changed its play at the line. */
  readonly changed: boolean | undefined;
  readonly outcome: OutcomeKind | undefined;
}

/**
 * Our snaps in the order of the sheet, with what follows from what was charted.
 *
 * @param library - says from which side a call is sent; null leaves the side not charted
 */
export function ownSnaps(film: Film, cuts: SituationCuts, library: CallLibrary | null = null): OwnSnap[] {
  const situations = situationCodes(film, cuts);
  const side = sentSide(film, library);
  const order = new Map(
    gamesInOrder(film)
      .flat()
      .map((row, place) => [row, place]),
  );
  return Array.from({ length: film.size }, (_, index) => {
    const family = textAt(film, 'family', index);
    return {
      index,
      order: order.get(index) ?? index,
      game: textAt(film, 'game', index) ?? 'not charted',
      situation: SITUATIONS[situations[index] ?? -1]?.id,
      family,
      path: textAt(film, 'path', index),
      coverage: textAt(film, 'coverage', index),
      rotation: textAt(film, 'rotation', index),
      side: side(index),
      pressure: family === undefined ? undefined : family !== 'base',
      shownEarly: yesOrNo(textAt(film, 'shown_early', index)),
      changed: yesOrNo(textAt(film, 'checked', index)),
      outcome: outcomeAt(film, index),
    };
  });
}

function yesOrNo(word: string | undefined): boolean | undefined {
  return word === undefined ? undefined : word === 'yes';
}

/** The pressures of a log with path and coverage both charted. */
export function pairedPressures(snaps: readonly OwnSnap[]): OwnSnap[] {
  return snaps.filter(({ pressure, path, coverage }) => pressure && path !== undefined && coverage !== undefined);
}

/** Counts of the words that `wordOf` gives, most frequent first (ties by name); not charted snaps are left out. */
export function countWords<T>(items: readonly T[], wordOf: (item: T) => string | undefined): [string, number][] {
  return mostFirst(countBy(items, wordOf));
}

/** Words as codes from 0 in order of appearance, and the words; `missing` stands where nothing was charted. */
export function codesOf(
  words: readonly (string | undefined)[],
  missing: number,
): { readonly codes: number[]; readonly words: readonly string[] } {
  const found = new Map<string, number>();
  const codes = words.map((word) => {
    if (word === undefined) return missing;
    const known = found.get(word) ?? found.size;
    found.set(word, known);
    return known;
  });
  return { codes, words: [...found.keys()] };
}
