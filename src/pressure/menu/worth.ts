import type { Call } from '../../game/call-library.ts';
import type { Spread } from '../../stats/spread.ts';
import type { CallScore, ScoreChapter } from '../score/score-result.ts';
import type { MenuInput } from './input.ts';

/** What one snap of a call is worth in a situation. */
export interface SnapWorth {
  /** Points saved against the base. */
  readonly points: number;
  /** Points given up against the best call there, where points rule this one's family out; 0 where they do not. */
  readonly givenUp: number;
  /** Share by which the theory is right more often than wrong, with what the interval leaves open counted against it. */
  readonly fit: number;
  readonly explosives: number;
  /** Not called there, not even to mix the coverages of its path. */
  readonly plainlyWrong: boolean;
}

/** Even at the high end of its interval wrong more often than right by this share of the snaps. Judgment. */
const PLAINLY_WRONG = 0.25;

/** Whether a theory is wrong beyond what the film leaves open. */
export function isPlainlyWrong(net: Spread | undefined): boolean {
  return net !== undefined && net.high < -PLAINLY_WRONG;
}

/** A call's worth by situation. */
export type CallWorth = ReadonlyMap<string, SnapWorth>;

/**
 * The worth of calls in every situation. Trust says how far the expected fit is believed against the low end of its
 * interval: below one the menu guards against a fit that is mostly what was not charted, or a few snaps.
 */
export function callWorths({ scores, fit, settings }: MenuInput, calls: readonly Call[]): CallWorth[] {
  const { trust } = settings.menu;
  const fits = new Map(fit.calls.map((one) => [keyOf(one.call, one.situation), one.net]));
  const byCall = new Map<string, Map<string, SnapWorth>>(calls.map(({ name }) => [name, new Map()]));
  const givenUp = givenUpBy(scores, new Set(byCall.keys()));
  for (const score of scores.calls) {
    const { call, situation, points, explosives } = score;
    const net = fits.get(keyOf(call, situation));
    byCall.get(call)?.set(situation, {
      points: points.mean / SNAPS_PER_SCORE,
      givenUp: givenUp(score) / SNAPS_PER_SCORE,
      fit: net ? trust * net.mean + (1 - trust) * net.low : 0,
      explosives: explosives.mean / SNAPS_PER_EXPLOSIVES,
      plainlyWrong: isPlainlyWrong(net),
    });
  }
  return calls.map(({ name }) => byCall.get(name) ?? new Map());
}

/** Points per ten snaps that a call gives up: a lead that chance may have made is none. */
function givenUpBy({ calls, families }: ScoreChapter, offered: ReadonlySet<string>): (score: CallScore) => number {
  const ruledOut = new Set(
    families.flatMap(({ family, situation, ruledOutBy }) => (ruledOutBy === null ? [] : [keyOf(family, situation)])),
  );
  const best = new Map<string, number>();
  for (const { call, situation, points } of calls)
    if (offered.has(call)) best.set(situation, Math.max(points.mean, best.get(situation) ?? Number.NEGATIVE_INFINITY));
  return ({ family, situation, points }) =>
    ruledOut.has(keyOf(family, situation)) ? Math.max(0, (best.get(situation) ?? points.mean) - points.mean) : 0;
}

const [SNAPS_PER_SCORE, SNAPS_PER_EXPLOSIVES] = [10, 100];

function keyOf(one: string, situation: string): string {
  return JSON.stringify([one, situation]);
}
