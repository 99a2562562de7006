import type { Grade } from '../../pressure/review/grade.ts';
import type { Review } from '../../pressure/review/review.ts';
import type { MarkedSnap } from '../../pressure/review/rule-record.ts';
import { shareWords } from './share-words.ts';

/** What Monday says of one call. */
export interface CallVerdict {
  readonly call: string;
  readonly words: string;
}

/** Calls by what to do with them: keep, fix how it is played or when it is called, drop. */
export interface Monday {
  readonly keep: readonly CallVerdict[];
  readonly fix: readonly CallVerdict[];
  readonly drop: readonly CallVerdict[];
}

/** Fewest graded snaps of a call before Monday speaks of it; judgment. */
const LEAST = 3;
/** Held this often a call is kept; under the second it is fixed or dropped. Judgment. */
const [KEEP_FROM, FIX_UNDER] = [0.6, 0.4];

/**
 * Keep, fix, drop: a call that holds is kept; one that does not is dropped where the rules say it was called into the
 * wrong snaps, and fixed where the idea was right. Leans all of them: a game has too few snaps of one call for more.
 */
export function mondayCalls({ grades, fit }: Review): Monday {
  const calls = (grades?.calls ?? []).filter(({ held }) => held.trials >= LEAST);
  const marked = (name: string) => (fit?.snaps ?? []).filter(({ call }) => call === name);
  const kindOf = (grade: Grade) => verdictOf(grade, marked(grade.name));
  const named = (kind: keyof Monday) =>
    calls
      .filter((grade) => kindOf(grade) === kind)
      .map((grade) => ({ call: grade.name, words: `held ${shareWords(grade.held)}${markWords(marked(grade.name))}` }));
  return { keep: named('keep'), fix: named('fix'), drop: named('drop') };
}

function verdictOf({ held }: Grade, marks: readonly MarkedSnap[]): keyof Monday | null {
  const share = held.estimate ?? 0;
  if (share >= KEEP_FROM) return 'keep';
  if (share >= FIX_UNDER) return null;
  return countOf(marks, 'wrong') > countOf(marks, 'right') ? 'drop' : 'fix';
}

function markWords(marks: readonly MarkedSnap[]): string {
  const [right, wrong] = [countOf(marks, 'right'), countOf(marks, 'wrong')];
  return right + wrong === 0 ? '' : `; right call ${right}, wrong call ${wrong}`;
}

function countOf(marks: readonly MarkedSnap[], mark: MarkedSnap['mark']): number {
  return marks.filter((snap) => snap.mark === mark).length;
}
