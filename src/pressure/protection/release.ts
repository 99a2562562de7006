import { ANSWERS, PASS_ANSWERS, type PassAnswer } from '../../game/answers.ts';
import { type Film, numberAt, textAt } from '../../game/film.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import { answerCodes } from '../snap/answer.ts';
import { offenseGames } from '../snap/offense-game.ts';
import type { ReleaseCurve } from './protection-result.ts';
import { fitRelease, type ReleaseFit, type ReleasePrior, type ReleaseTimes } from './release-fit.ts';
import { publishedRelease, sackSeconds } from './release-published.ts';
import { releaseWorth, type TimedThrows } from './release-worth.ts';

/** How fast the ball is out on one answer: this opponent, and an average one. */
export interface Release {
  readonly answer: PassAnswer;
  readonly fit: ReleaseFit;
  readonly typical: ReleaseFit;
  readonly timedThrows: number;
  readonly sacks: number;
  /** Timed throws of other opponents behind it. */
  readonly othersTimed: number;
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
  const league = archive ? throwsByOffense(archive, settings) : [];
  return PASS_ANSWERS.map((answer) => {
    const timed = league.map((times) => timedThrows(times[answer]));
    return releaseOf(answer, { own: own[answer], others: others?.[answer] ?? null, league: timed, settings });
  });
}

/** The release of one answer as the report draws it. */
export function releaseCurve({ answer, fit, timedThrows, sacks, othersTimed }: Release): ReleaseCurve {
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
    othersTimed,
  };
}

interface ChartedReleases extends ReleaseTimes {
  readonly sacks: number;
}

interface SeenReleases {
  readonly own: ChartedReleases;
  readonly others: ChartedReleases | null;
  /** The others' throws, offense by offense. */
  readonly league: readonly TimedThrows[];
  readonly settings: ReleaseInput['settings'];
}

function releaseOf(answer: PassAnswer, { own, others, league, settings }: SeenReleases): Release {
  const { level, their_speed } = settings;
  const average = publishedRelease(answer, level, 'average');
  const typical = others ? fitRelease(others, average) : fitRelease(NOTHING, average);
  const speedShift = publishedRelease(answer, level, their_speed).mu - average.mu;
  const curve = { mu: typical.mu + speedShift, sigma: typical.sigma, worth: average.worth };
  const prior: ReleasePrior = { ...curve, worth: releaseWorth(timedThrows(own), curve, league) };
  return {
    answer,
    fit: fitRelease(own, prior),
    typical,
    timedThrows: own.logTimes.length,
    sacks: own.sacks,
    othersTimed: others?.logTimes.length ?? 0,
  };
}

function timedThrows({ logTimes }: Pick<ReleaseTimes, 'logTimes'>): TimedThrows {
  const throws = logTimes.length;
  return { throws, mean: throws === 0 ? 0 : logTimes.reduce((sum, time) => sum + time, 0) / throws };
}

const NOTHING: ReleaseTimes = { logTimes: [], held: 0, heldPast: 0 };

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

/** The times of each offense of a chart. */
function throwsByOffense(
  chart: Film,
  { situations }: ReleaseInput['settings'],
): readonly Record<PassAnswer, Pick<ReleaseTimes, 'logTimes'>>[] {
  const codes = answerCodes(chart, situations);
  const found = new Map<string, Record<PassAnswer, { logTimes: number[] }>>();
  for (const { offense, rows } of offenseGames(chart)) {
    const times = found.get(offense) ?? emptyTimes();
    found.set(offense, times);
    for (const row of rows) addThrow(chart, row, times[ANSWERS[codes[row] as number] as PassAnswer]);
  }
  return [...found.values()];
}

function emptyTimes(): Record<PassAnswer, { logTimes: number[] }> {
  const times = PASS_ANSWERS.map((answer) => [answer, { logTimes: [] }]);
  return Object.fromEntries(times) as Record<PassAnswer, { logTimes: number[] }>;
}

function addThrow(chart: Film, row: number, times: { logTimes: number[] } | undefined): void {
  const seconds = numberAt(chart, 'time_to_throw', row);
  if (times === undefined || seconds === undefined) return;
  if (!NOT_THROWN.includes(textAt(chart, 'result', row) ?? '')) times.logTimes.push(Math.log(seconds));
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
