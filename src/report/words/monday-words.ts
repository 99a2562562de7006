import type { Review } from '../../pressure/review/review.ts';
import type { MarkedSnap } from '../../pressure/review/rule-record.ts';
import { type Count, shareWords } from './share-words.ts';

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
  /** Neither good nor bad enough to say. */
  readonly between: readonly CallVerdict[];
}

/** Fewest graded snaps of a call before Monday speaks of it; judgment. */
const LEAST = 3;
/** Held this often a call is kept; under the second it is fixed or dropped. Judgment. */
const [KEEP_FROM, FIX_UNDER] = [0.6, 0.4];

/**
 * Keep, fix, drop: a call that holds is kept; one that does not is dropped where the rules say it was called into the
 * wrong snaps, and fixed where the idea was right. Under 20 snaps all of them are leans.
 *
 * @param reviews - one game, or the games of a season
 */
export function mondayCalls(reviews: readonly Review[]): Monday {
  const calls = heldByCall(reviews).filter(({ held }) => held.trials >= LEAST);
  const marks = reviews.flatMap(({ fit }) => fit?.snaps ?? []);
  const markedOf = (name: string) => marks.filter(({ call }) => call === name);
  const named = (kind: keyof Monday) =>
    calls
      .filter(({ call, held }) => verdictOf(held, markedOf(call)) === kind)
      .map(({ call, held }) => ({ call, words: `held ${shareWords(held)}${markWords(markedOf(call))}` }));
  return { keep: named('keep'), fix: named('fix'), drop: named('drop'), between: named('between') };
}

/** How often each call held, most called first. */
function heldByCall(reviews: readonly Review[]): readonly { readonly call: string; readonly held: Count }[] {
  const sums = new Map<string, Count>();
  for (const { name, held } of reviews.flatMap(({ grades }) => grades?.calls ?? [])) {
    const { count, trials } = sums.get(name) ?? { count: 0, trials: 0 };
    sums.set(name, { count: count + held.count, trials: trials + held.trials });
  }
  return [...sums].map(([call, held]) => ({ call, held })).sort((a, b) => b.held.trials - a.held.trials);
}

function verdictOf({ count, trials }: Count, marks: readonly MarkedSnap[]): keyof Monday {
  const share = count / trials;
  if (share >= KEEP_FROM) return 'keep';
  if (share >= FIX_UNDER) return 'between';
  return countOf(marks, 'wrong') > countOf(marks, 'right') ? 'drop' : 'fix';
}

function markWords(marks: readonly MarkedSnap[]): string {
  const [right, wrong] = [countOf(marks, 'right'), countOf(marks, 'wrong')];
  return right + wrong === 0 ? '' : `; right call on ${right}, wrong on ${wrong}`;
}

function countOf(marks: readonly MarkedSnap[], mark: MarkedSnap['mark']): number {
  return marks.filter((snap) => snap.mark === mark).length;
}
