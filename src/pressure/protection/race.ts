import type { PassAnswer } from '../../game/answers.ts';
import type { Level } from '../../game/call-library.ts';
import { normalCdf } from '../../stats/normal.ts';
import { CHASE_DELAY, PASSER_DEPTH } from '../snap/pass-answer.ts';
import { homeBy } from './block-delay.ts';
import { unblockedArrival } from './protection.ts';
import type { Meeting, MetRusher } from './protection-meeting.ts';

/** Seconds after the snap at which the race is looked at, from 0.4 to 8. */
export const RACE_TIMES: readonly number[] = Array.from({ length: 153 }, (_, i) => 0.4 + 0.05 * i);

const STEP = 0.05;

/** Probability that at least one rusher is home by each of {@link RACE_TIMES}; never falls from one to the next. */
export type HomeCurve = Float64Array;

/** A log-normal release: mean and standard deviation of the logarithm of its seconds. */
export interface ReleaseLaw {
  readonly mu: number;
  readonly sigma: number;
}

/** Works out home curves for one level, remembering each man's own curve. */
export type HomeCurves = (meeting: Meeting, answer: PassAnswer) => HomeCurve;

/**
 * Home curves of meetings: somebody is home when one of the rushers is; rushers are taken as independent of each other
 * once it is known what each of them meets.
 */
export function createHomeCurves(level: Level): HomeCurves {
  const known = new Map<number, Float64Array>();
  return (meeting, answer) => {
    const nobody = new Float64Array(RACE_TIMES.length).fill(1);
    for (const rusher of meeting.rushers) {
      const arrival = unblockedArrival(rusher, level, PASSER_DEPTH[answer]) + CHASE_DELAY[answer];
      multiplyBy(nobody, notHome(rusher.fate, arrival, known));
    }
    return takenFromOne(nobody);
  };
}

/** One less each share, written over the shares. */
function takenFromOne(shares: Float64Array): Float64Array {
  for (let i = 0; i < shares.length; i += 1) shares[i] = 1 - (shares[i] as number);
  return shares;
}

const FATE_ORDER = ['free', 'late', 'blocked', 'doubled'] as const;

/** Arrivals are separated to this many seconds, so that a man's curve is worked out once. */
const ARRIVAL_STEP = 0.001;

function notHome(fate: MetRusher['fate'], arrival: number, known: Map<number, Float64Array>): Float64Array {
  const steps = Math.round(arrival / ARRIVAL_STEP);
  const key = steps * FATE_ORDER.length + FATE_ORDER.indexOf(fate);
  const found = known.get(key);
  if (found) return found;
  const curve = Float64Array.from(RACE_TIMES, (time) => 1 - homeBy(time, fate, steps * ARRIVAL_STEP));
  known.set(key, curve);
  return curve;
}

function multiplyBy(product: Float64Array, factor: Float64Array): void {
  for (let i = 0; i < product.length; i += 1) product[i] = (product[i] as number) * (factor[i] as number);
}

/** The home curve over a mix of pictures. @param shares - of the curves, summing to 1 */
export function mixCurves(curves: readonly HomeCurve[], shares: readonly number[]): HomeCurve {
  const mixed = new Float64Array(RACE_TIMES.length);
  curves.forEach((curve, j) => {
    addTimes(mixed, curve, shares[j] as number);
  });
  return mixed;
}

function addTimes(mixed: Float64Array, curve: HomeCurve, share: number): void {
  for (let i = 0; i < mixed.length; i += 1) mixed[i] = (mixed[i] as number) + share * (curve[i] as number);
}

/**
 * Probability that a rusher is home before the ball is out, 0 to 1. The later the ball is out, the higher.
 *
 * @param curve - from {@link createHomeCurves} or {@link mixCurves}
 */
export function homeBeforeRelease(curve: HomeCurve, law: ReleaseLaw): number {
  return homeAtRelease(curve, releaseChances(law));
}

/** The chance that the ball is out at each of {@link RACE_TIMES}, summing to 1: a release law worked out once. */
export function releaseChances({ mu, sigma }: ReleaseLaw): Float64Array {
  const last = RACE_TIMES.length - 1;
  let before = 0;
  return Float64Array.from(RACE_TIMES, (time, i) => {
    const by = i === last ? 1 : normalCdf((Math.log(time + STEP / 2) - mu) / sigma);
    const chance = by - before;
    before = by;
    return chance;
  });
}

/** {@link homeBeforeRelease} from chances of {@link releaseChances}. */
export function homeAtRelease(curve: HomeCurve, chances: Float64Array): number {
  let home = 0;
  for (let i = 0; i < curve.length; i += 1) home += (chances[i] as number) * (curve[i] as number);
  return home;
}

/** Seconds by which a rusher is home half the time; the last of {@link RACE_TIMES} when that is later. */
export function medianArrival(curve: HomeCurve): number {
  const at = curve.findIndex((share) => share >= 0.5);
  return RACE_TIMES[at === -1 ? RACE_TIMES.length - 1 : at] ?? 0;
}
