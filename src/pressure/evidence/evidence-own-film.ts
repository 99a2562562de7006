import type { CallLibrary } from '../../game/call-library.ts';
import { type Film, textAt } from '../../game/film.ts';
import { ANSWERS, type Answer, FAMILIES, type Family } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { answerCodes } from '../snap/answer.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { OUTCOME_KINDS, outcomeAt } from '../snap/outcome.ts';
import { cellIndex } from './evidence-cell.ts';

/** Our own snaps by family, answer and outcome kind. */
export interface OwnFilmCounts {
  /** Counts at `cellIndex(family, answer) * 5 + kind`. */
  readonly counts: Float64Array;
  /** Counted snaps by family, in the order of the vocabulary. */
  readonly snaps: Float64Array;
  /** Snaps that could not be counted: no family, no outcome, or not even run or pass. */
  readonly unread: number;
}

/**
 * Counts our own film: every snap counts one, in the cell of the family we sent and the answer they had. A snap
 * charted only as a pass is one snap split over the pass answers as they typically fall.
 *
 * @param library - tells the family of a snap on which only the call was charted
 */
export function countOwnFilm(ownFilm: Film | null, library: CallLibrary | null, cuts: SituationCuts): OwnFilmCounts {
  const counts = new Float64Array(FAMILIES.length * ANSWERS.length * OUTCOME_KINDS.length);
  const snaps = new Float64Array(FAMILIES.length);
  if (ownFilm === null) return { counts, snaps, unread: 0 };
  const families = new Map((library?.calls ?? []).map(({ name, family }) => [name, family]));
  const answers = answerCodes(ownFilm, cuts);
  let unread = 0;
  for (let i = 0; i < ownFilm.size; i++) {
    const family = familyAt(ownFilm, i, families);
    const outcome = outcomeAt(ownFilm, i);
    const split = answerSplit(answers[i] ?? NOT_KNOWN, textAt(ownFilm, 'play_kind', i));
    if (family === undefined || outcome === undefined || split === null) {
      unread += 1;
      continue;
    }
    const f = FAMILIES.indexOf(family);
    snaps[f] = (snaps[f] ?? 0) + 1;
    addSnap(counts, { f, kind: OUTCOME_KINDS.indexOf(outcome), split });
  }
  return { counts, snaps, unread };
}

type AnswerSplit = readonly (readonly [Answer, number])[];

/** How a bare pass splits over the pass answers; judgement. */
const BARE_PASS: AnswerSplit = [
  ['screen', 0.15],
  ['quick', 0.35],
  ['dropback', 0.4],
  ['deep_shot', 0.1],
];

function answerSplit(code: number, playKind: string | undefined): AnswerSplit | null {
  const answer = ANSWERS[code];
  if (answer !== undefined) return [[answer, 1]];
  return playKind === 'pass' ? BARE_PASS : null;
}

function familyAt(ownFilm: Film, index: number, families: ReadonlyMap<string, Family>): Family | undefined {
  const charted = textAt(ownFilm, 'family', index) as Family | undefined;
  return charted ?? families.get(textAt(ownFilm, 'call', index) ?? '');
}

function addSnap(counts: Float64Array, snap: { f: number; kind: number; split: AnswerSplit }): void {
  for (const [answer, part] of snap.split) {
    const at = cellIndex(snap.f, ANSWERS.indexOf(answer)) * OUTCOME_KINDS.length + snap.kind;
    counts[at] = (counts[at] ?? 0) + part;
  }
}
