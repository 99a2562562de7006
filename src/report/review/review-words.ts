import { type Grade, LEAST_GRADED } from '../../pressure/review/grade.ts';
import type { RangeReview } from '../../pressure/review/range-hits.ts';
import type { Review } from '../../pressure/review/review.ts';
import { counted, fixed, listed, signed } from '../words/number-words.ts';
import { countWords, isThin } from '../words/share-words.ts';

/** Printed wherever one game is judged. */
export const ONE_GAME =
  'One game proves nothing: what stands out here is what to look at on film, not a verdict. The season page adds the games up.';

/** The review in sentences: forecast, ranges, tells, calls, our film. */
export function reviewSentences(review: Review): readonly string[] {
  return [sourceWords(review), scoreWords(review), rangeWords(review.ranges), tellWords(review), ...ourWords(review)];
}

function sourceWords({ sunday, gameSnaps, seenBefore }: Review): string {
  const from = {
    'report.json': 'Sunday’s plan is the saved one.',
    'report.json of other inputs':
      'Sunday’s plan is the saved one; sheets or settings were changed after it, and it is judged as it was said.',
    'worked out again':
      'No saved plan was there: Sunday’s plan was worked out again from the folder, without the game.',
  }[sunday];
  const seen =
    seenBefore.length === 0 ? '' : ` Its film already held ${listed(seenBefore)}: what is said of that is no forecast.`;
  return `${counted(gameSnaps, 'snap', 'snaps')} of the game. ${from}${seen}`;
}

function scoreWords({ scores }: Review): string {
  if (scores.length === 0) return 'Nothing that was forecast was charted in the game.';
  const better = scores.filter(({ difference }) => difference < 0).length;
  const clear = scores.filter(
    ({ difference, standardError: error }) => error !== null && Math.abs(difference) > 2 * error,
  );
  return `The forecast was closer than their plain film rate on ${better} of ${counted(scores.length, 'question', 'questions')}; ${clearWords(clear)}.`;
}

/** Of the questions on which the difference is beyond its error: how many either way. */
export function clearWords(clear: readonly { readonly difference: number }[]): string {
  const closer = clear.filter(({ difference }) => difference < 0).length;
  const farther = clear.length - closer;
  return clear.length === 0
    ? 'nowhere by more than its error allows'
    : `by more than its error allows closer on ${closer} and farther off on ${farther}`;
}

/**
 * How the counts fell into their ranges, with what was to be expected.
 *
 * @example "73 of 73 counts fell into their 95% ranges, 72 to be expected; …"
 */
export function rangeWords({ outer, inner }: RangeReview): string {
  const { trials } = outer.hits;
  if (trials === 0) return 'No count reached five snaps, so no range was checked.';
  const due = (expected: number | null) => Math.round((expected ?? 0) * trials);
  return `${countWords(outer.hits)} counts fell into their 95% ranges, ${due(outer.expected)} to be expected (ranges of whole numbers hold more than they are asked to); ${countWords(inner.hits)} into the central halves, ${due(inner.expected)} to be expected. The counts overlap, so this is no test.`;
}

function tellWords({ tells }: Review): string {
  if (tells.length === 0) return 'Sunday’s report named no habit to watch.';
  const count = (verdict: string) => tells.filter((tell) => tell.verdict === verdict).length;
  const unseen = count('too few') + count('not seen');
  return `Of ${counted(tells.length, 'habit', 'habits')} to watch ${count('held')} held, ${count('died')} did not, ${unseen} came on fewer than three snaps.`;
}

function ourWords({ grades, guesses }: Review): readonly string[] {
  const graded = grades
    ? `${counted(grades.total.snaps, 'snap', 'snaps')} of ours graded, ${grades.ungraded} could not be: ${overWords(grades.total)}.`
    : 'Our own calls of the game were not charted, so no call is graded.';
  if (!guesses) return [graded];
  const { fromPath, blind, read } = guesses;
  const thin = isThin(fromPath) ? ' (thin)' : '';
  return [
    graded,
    `Who had read our ${counted(read, 'earlier pressure', 'earlier pressures')} would have named the coverage from the path on ${countWords(fromPath)}${thin}, blind on ${countWords(blind)}.`,
  ];
}

/**
 * Points beyond what was expected with the spread that chance alone gives them.
 *
 * @example "+3.1 points over expectation, where chance alone swings by 9.8"
 */
export function overWords({ overExpectation, high, saved, snaps }: Grade): string {
  const swing = ((high - saved) * snaps) / 10;
  return `${signed(overExpectation)} points over expectation, where chance alone swings by ${fixed(swing, 1)} (95%)`;
}

/** A range of points saved per ten snaps; one to four snaps are not blown up to ten. */
export function savedWords({ snaps, saved, low, high }: Pick<Grade, 'snaps' | 'saved' | 'low' | 'high'>): string {
  if (snaps === 0) return 'no snaps';
  return snaps < LEAST_GRADED ? 'too few' : `${signed(saved)} (${signed(low)} to ${signed(high)})`;
}
