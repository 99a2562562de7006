import { type Film, numberAt, textAt } from '../../game/film.ts';
import { ANSWERS } from '../../game/vocabulary.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import { answerCodes } from '../snap/answer.ts';
import { PASS_ANSWERS, type PassAnswer } from '../snap/pass-answer.ts';
import type { ReleaseCurve } from './protection-result.ts';
import { fitRelease, type ReleaseFit, type ReleasePrior, type ReleaseTimes } from './release-fit.ts';
import { publishedRelease, sackSeconds } from './release-published.ts';

/** How fast the ball is out on one answer: this opponent, and an average one. */
export interface Release {
  readonly answer: PassAnswer;
  readonly fit: ReleaseFit;
  readonly typical: ReleaseFit;
  readonly timedThrows: number;
  readonly sacks: number;
  readonly source: string;
}

/** What releases are worked out from; `archive` holds other offenses. */
export interface ReleaseInput {
  readonly chart: Film;
  readonly archive: Film | null;
  readonly settings: Pick<WeekSettings, 'level' | 'their_speed' | 'situations'>;
}

/**
 * How fast the ball is out, for every answer that ends in a throw: the opponent's charted times shrunk to other
 * offenses' in the archive, and those to the published curve. Sacks count as balls held past the usual sack, in the
 * proportion in which throws were timed; scrambles have no time and are left out. The average opponent is the archive's, or the published curve's, at average speed.
 */
export function releases({ chart, archive, settings }: ReleaseInput): readonly Release[] {
  const own = timesByAnswer(chart, settings);
  const others = archive && timesByAnswer(archive, settings);
  return PASS_ANSWERS.map((answer) =>
    releaseOf(answer, { own: own[answer], others: others?.[answer] ?? null, settings }),
  );
}

/** The release of one answer as the report draws it. */
export function releaseCurve({ answer, fit, timedThrows, sacks, source }: Release): ReleaseCurve {
  const { mu, sigma, muLow, muHigh } = fit;
  return {
    answer,
    timedThrows,
    sacks,
    median: Math.exp(mu),
    low: Math.exp(muLow),
    high: Math.exp(muHigh),
    mu,
    sigma,
    source,
  };
}

interface ChartedReleases extends ReleaseTimes {
  readonly sacks: number;
}

interface SeenReleases {
  readonly own: ChartedReleases;
  readonly others: ChartedReleases | null;
  readonly settings: ReleaseInput['settings'];
}

function releaseOf(answer: PassAnswer, { own, others, settings }: SeenReleases): Release {
  const { level, their_speed } = settings;
  const average = publishedRelease(answer, level, 'average');
  const typical = others ? fitRelease(others, average) : fitRelease(NOTHING, average);
  const speedShift = publishedRelease(answer, level, their_speed).mu - average.mu;
  const prior: ReleasePrior = { mu: typical.mu + speedShift, sigma: typical.sigma, worth: average.worth };
  return {
    answer,
    fit: fitRelease(own, prior),
    typical,
    timedThrows: own.logTimes.length,
    sacks: own.sacks,
    source: sourceWords(own, others),
  };
}

const NOTHING: ReleaseTimes = { logTimes: [], held: 0, heldPast: 0 };

function sourceWords(own: ChartedReleases, others: ChartedReleases | null): string {
  const parts = ['published curve of professional play'];
  if (others && others.logTimes.length > 0) parts.push(`${others.logTimes.length} timed throws of other opponents`);
  const sacks = own.held === 0 ? '' : `, ${own.sacks} sacks counted as balls held past the usual sack`;
  parts.push(own.logTimes.length === 0 ? 'none of theirs timed' : `${own.logTimes.length} of theirs timed${sacks}`);
  return parts.join(', ');
}

function timesByAnswer(
  chart: Film,
  { level, situations }: ReleaseInput['settings'],
): Record<PassAnswer, ChartedReleases> {
  const codes = answerCodes(chart, situations);
  const heldPast = Math.log(sackSeconds(level));
  const timesOf = (answer: PassAnswer): ChartedReleases => {
    const { logTimes, thrown, sacks } = throwsOf(chart, codes, ANSWERS.indexOf(answer));
    const timedShare = thrown === 0 ? 0 : logTimes.length / thrown;
    return { logTimes, held: sacks * timedShare, heldPast, sacks };
  };
  return Object.fromEntries(PASS_ANSWERS.map((answer) => [answer, timesOf(answer)])) as Record<
    PassAnswer,
    ChartedReleases
  >;
}

/** Throws and sacks of the snaps with this answer, and the logarithms of the times charted. */
function throwsOf(chart: Film, codes: Uint8Array, answer: number) {
  const logTimes: number[] = [];
  let thrown = 0;
  let sacks = 0;
  for (let i = 0; i < chart.size; i++) {
    if (codes[i] !== answer) continue;
    const result = textAt(chart, 'result', i) ?? '';
    if (result === 'sack') sacks++;
    if (NOT_THROWN.includes(result)) continue;
    thrown++;
    const seconds = numberAt(chart, 'time_to_throw', i);
    if (seconds !== undefined) logTimes.push(Math.log(seconds));
  }
  return { logTimes, thrown, sacks };
}

/** A time written beside one of these is not a release. */
const NOT_THROWN = ['sack', 'scramble', 'rush'];
