import { benjaminiHochberg } from '../../stats/adjust.ts';
import { betaBinomialPmf } from '../../stats/beta-binomial.ts';
import { type Share, share } from '../../stats/share.ts';
import type { Forecast, ForecastChapter, Target } from '../forecast/forecast-result.ts';
import { TARGET_STRENGTHS } from '../forecast/target-strengths.ts';
import { pseudoCounts, sundayShares } from './live-forecast.ts';
import { type LiveTally, liveTotals } from './live-tally.ts';

/** A habit tonight against what Sunday's forecast allowed for, game-to-game swings included. */
export interface MovedHabit {
  readonly target: Target;
  readonly situation: string;
  readonly name: string;
  /** Share Sunday's forecast expected on tonight's snaps. */
  readonly expected: number;
  readonly firstHalf: Share;
  /** Chance of a count at least this far out if nothing has changed, both sides. */
  readonly p: number;
  readonly adjusted: number;
}

/** What truly moved, what only looks so, and how much was looked at. */
export interface MovedSearch {
  readonly looked: number;
  readonly discoveryRate: number;
  readonly moved: readonly MovedHabit[];
  readonly looksSo: readonly MovedHabit[];
}

/** Share of false alarms accepted among what is called moved; the same as for the tells of the report. */
export const DISCOVERY_RATE = 0.1;
/** Fewer snaps say nothing about a habit tonight (no count is forecast under five either; judgment). */
export const LEAST_SNAPS = 5;
/** A difference from which the eye would call it moved; judgment. */
const LOOKS_MOVED = 0.15;

/**
 * Tests every class of every forecast with at least five snaps tonight: the tail of the beta-binomial that Sunday's
 * forecast and the usual game-to-game spread allow, both sides, corrected over everything looked at. Over all snaps the
 * expectation is that of tonight's situations, so that more third and longs are not mistaken for a new habit.
 */
export function movedHabits(chapter: ForecastChapter, tallies: readonly LiveTally[]): MovedSearch {
  const tests = chapter.forecasts.flatMap((forecast) => {
    const tally = tallies.find(({ target }) => target === forecast.target);
    return tally ? testsOf(chapter, tally, forecast) : [];
  });
  const adjusted = benjaminiHochberg(tests.map(({ p }) => p));
  const habits = tests.map((test, i) => ({ ...test, adjusted: adjusted[i] as number })).sort((a, b) => a.p - b.p);
  const moved = habits.filter((habit) => habit.adjusted <= DISCOVERY_RATE);
  const looksSo = habits.filter((habit) => habit.adjusted > DISCOVERY_RATE && differs(habit));
  return { looked: tests.length, discoveryRate: DISCOVERY_RATE, moved, looksSo };
}

type Tested = Omit<MovedHabit, 'adjusted'>;

function testsOf(chapter: ForecastChapter, tally: LiveTally, forecast: Forecast): Tested[] {
  const all = forecast.situation === 'all';
  const counts = all ? liveTotals(tally) : (tally.bySituation.get(forecast.situation) ?? []);
  const trials = counts.reduce((sum, count) => sum + count, 0);
  if (trials < LEAST_SNAPS) return [];
  const expected = all ? expectedShares(chapter, tally, trials) : forecast.classes.map(({ share: part }) => part);
  const concentration = concentrationOf(chapter, forecast);
  const shown = forecast.classes.length === 2 ? forecast.classes.slice(0, 1) : forecast.classes;
  return shown.map(({ name }, k) => {
    const count = counts[k] as number;
    const mean = Math.min(1, Math.max(0, expected[k] as number));
    const p = bothTails(betaBinomialPmf({ trials, mean, concentration }), count);
    return {
      target: forecast.target,
      situation: forecast.situation,
      name,
      expected: mean,
      firstHalf: share(count, trials),
      p,
    };
  });
}

/** What Sunday's forecast expected on tonight's mix of situations. */
function expectedShares(chapter: ForecastChapter, tally: LiveTally, trials: number): number[] {
  const parts = [...tally.bySituation].map(([situation, counts]) => {
    const snaps = counts.reduce((sum, count) => sum + count, 0);
    return sundayShares(chapter, tally.target, situation).map((part) => (snaps * part) / trials);
  });
  return tally.classes.map((_, k) => parts.reduce((sum, part) => sum + (part[k] as number), 0));
}

/** What the forecast is worth for one game: its own snaps, and the usual spread from game to game. */
export function concentrationOf(chapter: ForecastChapter, forecast: Forecast): number {
  const settled = pseudoCounts(chapter, forecast).reduce((sum, alpha) => sum + alpha, 0);
  return 1 / (1 / settled + 1 / TARGET_STRENGTHS[forecast.target].plan.gameToGame);
}

function bothTails(pmf: Float64Array, count: number): number {
  let [below, above] = [0, 0];
  pmf.forEach((p, k) => {
    if (k <= count) below += p;
    if (k >= count) above += p;
  });
  return Math.min(1, 2 * Math.min(below, above));
}

function differs({ expected, firstHalf }: Tested): boolean {
  return firstHalf.estimate !== null && Math.abs(firstHalf.estimate - expected) >= LOOKS_MOVED;
}
