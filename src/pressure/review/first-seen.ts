import { ANSWERS } from '../../game/answers.ts';
import { groupBy } from '../../game/by-word.ts';
import { chartedCount, type Film, rowsOf, textAt } from '../../game/film.ts';
import { freeWordKey } from '../../game/free-word.ts';
import { SITUATIONS } from '../../game/situations.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { answerCodes } from '../snap/answer.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { situationCodes } from '../snap/situation.ts';
import { snapName } from '../snap/snap-name.ts';

/** What of a snap is looked up on Sunday's film. */
export const FIRST_SEEN_COLUMNS = ['formation', 'personnel', 'concept', 'motion'] as const;
/** One word of {@link FIRST_SEEN_COLUMNS}, or `answer` in a situation. */
export type FirstSeenKind = (typeof FIRST_SEEN_COLUMNS)[number] | 'answer';

/** Something the game showed that Sunday's film did not. */
export interface FirstSeen {
  readonly kind: FirstSeenKind;
  readonly value: string;
  /** For an answer, the situation it came in; null otherwise. */
  readonly situation: string | null;
  /** Film snaps on which it could have been seen. */
  readonly filmSnaps: number;
  readonly snaps: readonly string[];
}

/** The game and the film that Sunday's plan was made from. */
export interface FirstSeenInput {
  readonly game: Film;
  readonly film: Film;
  readonly cuts: SituationCuts;
}

/** Fewer charted film snaps show too little to call a thing new; judgment. */
const LEAST_FILM = { column: 20, situation: 8 } as const;

/**
 * Formations, personnel, plays and motions of the game that stand nowhere on Sunday's film, and answers that never came
 * in their situation there; the most frequent first. What the film did not chart enough of is left out.
 */
export function firstSeen(input: FirstSeenInput): readonly FirstSeen[] {
  const columns = FIRST_SEEN_COLUMNS.flatMap((column) => newWords(input, column));
  return [...columns, ...newAnswers(input)].sort((a, b) => b.snaps.length - a.snaps.length);
}

function newWords({ game, film }: FirstSeenInput, column: (typeof FIRST_SEEN_COLUMNS)[number]): FirstSeen[] {
  const filmSnaps = chartedCount(film, column);
  if (filmSnaps < LEAST_FILM.column) return [];
  const seen = new Set(rowsOf(film).flatMap((i) => keyAt(film, column, i) ?? []));
  const fresh = rowsOf(game).filter((i) => {
    const key = keyAt(game, column, i);
    return key !== undefined && !seen.has(key);
  });
  return [...groupBy(fresh, (i) => keyAt(game, column, i)).values()].map((own) => ({
    kind: column,
    value: textAt(game, column, own[0] ?? 0) ?? '',
    situation: null,
    filmSnaps,
    snaps: own.map((i) => snapName(game, i)),
  }));
}

function keyAt(film: Film, column: (typeof FIRST_SEEN_COLUMNS)[number], index: number): string | undefined {
  const word = textAt(film, column, index);
  return word === undefined ? undefined : freeWordKey(word);
}

function newAnswers({ game, film, cuts }: FirstSeenInput): FirstSeen[] {
  const [before, now] = [answersBySituation(film, cuts), answersBySituation(game, cuts)];
  return SITUATIONS.flatMap(({ id }, place) => {
    const filmed = before.filter(({ situation }) => situation === place);
    if (filmed.length < LEAST_FILM.situation) return [];
    return ANSWERS.flatMap((answer, code) => {
      const own = now.filter((snap) => snap.situation === place && snap.answer === code);
      if (own.length === 0 || filmed.some((snap) => snap.answer === code)) return [];
      const snaps = own.map(({ index }) => snapName(game, index));
      return { kind: 'answer' as const, value: answer, situation: id, filmSnaps: filmed.length, snaps };
    });
  });
}

function answersBySituation(film: Film, cuts: SituationCuts) {
  const [answers, situations] = [answerCodes(film, cuts), situationCodes(film, cuts)];
  return rowsOf(film)
    .map((index) => ({ index, answer: answers[index], situation: situations[index] }))
    .filter(({ answer, situation }) => answer !== NOT_KNOWN && situation !== NOT_KNOWN);
}
