import type { RangeReview } from '../../pressure/review/range-hits.ts';
import { LEAST_GAMES, type Season } from '../../pressure/review/season.ts';
import { studentWidth } from '../../stats/student.ts';
import { familyLabel } from '../words/label.ts';
import { counted, fixed, listed } from '../words/number-words.ts';
import { shareWords } from '../words/share-words.ts';
import { clearWords, rangeWords } from './review-words.ts';

/** The season in sentences: which families paid, is our guess rate falling, does the forecast hold up. */
export function seasonSentences(season: Season): readonly string[] {
  return [
    gameWords(season),
    familyWords(season),
    guessWords(season),
    tellWords(season),
    scoreWords(season),
    `${rangeWords(season.ranges)}${rangeLook(season)}`,
    lineWords(season),
  ];
}

function gameWords({ games, notReviewed }: Season): string {
  const few = games.length < LEAST_GAMES ? ` Under ${LEAST_GAMES} games this is a first look.` : '';
  const lacking = notReviewed.length === 0 ? '' : ` Not reviewed yet: ${listed(notReviewed)} (pressure-plan review).`;
  return `${counted(games.length, 'game', 'games')} reviewed.${few}${lacking}`;
}

function scoreWords({ targets, games }: Season): string {
  if (targets.length === 0) return 'Nothing we forecast is charted in the games.';
  const better = targets.filter(({ difference }) => difference < 0).length;
  const sure = games.length < LEAST_GAMES ? 'too few games to say more' : clearWords(targets.filter(isClear));
  return `The forecast beat the plain film rate on ${better} of ${counted(targets.length, 'question', 'questions')}: ${sure}.`;
}

/** Beyond its error over games, few games allowed for (Student's t, 95%). */
function isClear({ difference, standardError, games }: Season['targets'][number]): boolean {
  return standardError !== null && Math.abs(difference) > studentWidth(0.95, games - 1) * standardError;
}

/** Judged on the central halves: ranges of whole numbers near 95% can hardly miss. */
function rangeLook({ ranges, games }: Season): string {
  if (games.length < LEAST_GAMES) return '';
  const look = lookOf(ranges);
  return look === 'as expected' ? ' The ranges look about right.' : ` The ranges look ${look}.`;
}

function lookOf({ inner }: RangeReview): 'as expected' | 'too wide' | 'too narrow' {
  const { expected, hits } = inner;
  if (expected === null || hits.estimate === null) return 'as expected';
  const error = Math.sqrt((expected * (1 - expected)) / hits.trials);
  const apart = (hits.estimate - expected) / error;
  if (Math.abs(apart) <= SURPRISING) return 'as expected';
  return apart > 0 ? 'too wide' : 'too narrow';
}

/** Standard errors; three and not two, because the counts overlap and so scatter more than alone. Judgment. */
const SURPRISING = 3;

/** Whether yes-or-no forecasts were as sure as they should be, and as high. */
function lineWords({ line, bins }: Season): string {
  const snaps = bins.reduce((sum, { came }) => sum + came.trials, 0);
  const asked = counted(snaps, 'yes-or-no forecast', 'yes-or-no forecasts');
  if (line.slope === null || line.inTheLarge === null) return `${asked}: too few to say whether they were too bold.`;
  const came = cameWords(line.inTheLarge, snaps);
  return `${asked}: ${boldWords(line.slope)} (slope ${fixed(line.slope, 2)}, 1 is ideal); what was asked about came ${came} (shift ${fixed(line.inTheLarge, 2)}, 0 is ideal).`;
}

/** A slope within a quarter of 1 is near enough for one season. Judgment. */
const BOLD_BY = 0.25;

function boldWords(slope: number): string {
  if (slope < 1 - BOLD_BY) return 'too bold';
  return slope > 1 + BOLD_BY ? 'too careful' : 'about as bold as they should be';
}

/** A shift in log odds has a standard error of at least 2 / sqrt(snaps), a coin's; within two of them it is luck. */
function cameWords(shift: number, snaps: number): string {
  if (Math.abs(shift) <= 4 / Math.sqrt(snaps)) return 'about as often as said';
  return shift < 0 ? 'less often than said' : 'more often than said';
}

function familyWords({ families }: Season): string {
  if (families.length === 0) return 'None of our calls is charted in a reviewed game.';
  const apart = families.filter(({ standing }) => standing !== 'too_few' && standing !== 'within');
  const few = families.filter(({ standing }) => standing === 'too_few').length;
  const named = apart.map(
    ({ name, standing }) => `${familyLabel(name)} did ${standing === 'above' ? 'better' : 'worse'} than expected`,
  );
  const said = named.length === 0 ? 'none did better or worse than expected' : listed(named);
  return `What paid: ${said}; ${few} of ${families.length} families have too few snaps or games to say.`;
}

function guessWords({ guesses }: Season): string {
  const last = guesses.games.at(-1);
  if (!last) return 'How easy we are to read is not known: earlier film or the calls of the games are missing.';
  const now = `Last game an opponent off our film calls the coverage from the path on ${shareWords(last.fromPath)}`;
  const { change } = guesses;
  if (!change || change.estimate === null) return `${now}; no earlier game to compare it with.`;
  const points = `${change.estimate < 0 ? 'down' : 'up'} ${Math.round(Math.abs(change.estimate) * 100)} points`;
  const sure = change.low > 0 || change.high < 0 ? '' : '; could be luck';
  return `${now}, ${points}${sure}.`;
}

function tellWords({ tells }: Season): string {
  const seen = tells.held + tells.died;
  return seen === 0
    ? 'No tendency we flagged came on three snaps or more.'
    : `Tendencies we flagged: ${tells.held} of ${seen} held.`;
}
