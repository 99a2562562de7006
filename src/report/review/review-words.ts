import { type Grade, LEAST_GRADED } from '../../pressure/review/grade.ts';
import type { RangeReview } from '../../pressure/review/range-hits.ts';
import type { Review } from '../../pressure/review/review.ts';
import { counted, fixed, listed, signed } from '../words/number-words.ts';
import { countWords, isThin, shareWords } from '../words/share-words.ts';

/** Printed wherever one game is judged. */
export const ONE_GAME =
  'One game proves nothing. What stands out here is what to look at on film; the season page adds the games up.';

/** The review in sentences: forecast, ranges, tells, calls, our film. */
export function reviewSentences(review: Review): readonly string[] {
  return [sourceWords(review), scoreWords(review), rangeWords(review.ranges), tellWords(review), ...ourWords(review)];
}

function sourceWords({ sunday, gameSnaps, seenBefore }: Review): string {
  const from = {
    saved: 'Sunday’s plan is the saved one.',
    saved_of_other_inputs:
      'Sunday’s plan is the saved one; sheets or settings changed after it, and it is judged as it stood.',
    worked_out_again: 'No saved plan: Sunday’s plan is worked out again from the folder, without the game.',
  }[sunday];
  const seen =
    seenBefore.length === 0 ? '' : ` Its film already held ${listed(seenBefore)}, so that part is not a forecast.`;
  return `${counted(gameSnaps, 'snap', 'snaps')} of the game. ${from}${seen}`;
}

function scoreWords({ scores }: Review): string {
  if (scores.length === 0) return 'Nothing we forecast is charted in the game.';
  const better = scores.filter(({ difference }) => difference < 0).length;
  const clear = scores.filter(
    ({ difference, standardError: error }) => error !== null && Math.abs(difference) > 2 * error,
  );
  return `The forecast beat their plain film rate on ${better} of ${counted(scores.length, 'question', 'questions')}: ${clearWords(clear)}.`;
}

/** Of the questions on which the difference is beyond its error: how many either way. */
export function clearWords(clear: readonly { readonly difference: number }[]): string {
  const closer = clear.filter(({ difference }) => difference < 0).length;
  const farther = clear.length - closer;
  return clear.length === 0 ? 'no clear difference on any' : `clearly better on ${closer}, clearly worse on ${farther}`;
}

/**
 * How the counts fell into their ranges, with what was to be expected.
 *
 * @example "All 73 counts landed inside their 95% ranges (72 expected); …"
 */
export function rangeWords({ outer, inner }: RangeReview): string {
  const { trials } = outer.hits;
  if (trials === 0) return 'No count reached five snaps, so no range was checked.';
  const due = (expected: number | null) => Math.round((expected ?? 0) * trials);
  const landed = outer.hits.count === trials ? `All ${trials} counts` : `${countWords(outer.hits)} counts`;
  return `${landed} landed inside their 95% ranges (${due(outer.expected)} expected); ${countWords(inner.hits)} in the middle half (${due(inner.expected)} expected). Counts overlap, so this is not a test.`;
}

function tellWords({ tells }: Review): string {
  if (tells.length === 0) return 'Sunday’s report flagged no tendencies.';
  const count = (verdict: string) => tells.filter((tell) => tell.verdict === verdict).length;
  const unseen = count('too_few') + count('not_seen');
  return `Sunday’s tendencies: ${count('held')} held, ${count('died')} did not, ${unseen} came on fewer than three snaps.`;
}

function ourWords({ grades, guesses }: Review): readonly string[] {
  const graded = grades
    ? `${gradedWords(grades)}: ${overWords(grades.total)}.`
    : 'Our own calls are not charted, so no call is graded.';
  if (!guesses) return [graded];
  const { fromPath, blind, read } = guesses;
  const thin = isThin(fromPath) ? ' (thin)' : '';
  return [
    graded,
    `Anyone who broke down our ${counted(read, 'earlier pressure', 'earlier pressures')} calls the coverage off the path on ${shareWords(fromPath)}${thin}; a blind guess gets ${blind.count}.`,
  ];
}

function gradedWords({ total, ungraded }: NonNullable<Review['grades']>): string {
  return ungraded === 0
    ? `Graded all ${counted(total.snaps, 'snap', 'snaps')}`
    : `Graded ${total.snaps} of ${counted(total.snaps + ungraded, 'snap', 'snaps')}`;
}

/**
 * Points beyond what was expected, with the spread of luck alone.
 *
 * @example "3.1 points better than expected; luck alone is plus or minus 10"
 */
export function overWords({ overExpectation, high, saved, snaps }: Grade): string {
  const swing = ((high - saved) * snaps) / 10;
  return `${fixed(Math.abs(overExpectation), 1)} points ${overExpectation < 0 ? 'worse' : 'better'} than expected; luck alone is plus or minus ${fixed(swing, 0)}`;
}

/** A range of points saved per ten snaps; one to four snaps are not blown up to ten. */
export function savedWords({ snaps, saved, low, high }: Pick<Grade, 'snaps' | 'saved' | 'low' | 'high'>): string {
  if (snaps === 0) return 'no snaps';
  return snaps < LEAST_GRADED ? 'too few' : `${signed(saved)} (${signed(low)} to ${signed(high)})`;
}
