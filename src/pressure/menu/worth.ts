import type { Call } from '../../game/call-library.ts';
import type { Spread } from '../../stats/spread.ts';
import type { MenuInput } from './input.ts';

/** What one snap of a call is worth in a situation. */
export interface SnapWorth {
  /** Points saved against the base. */
  readonly points: number;
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
  for (const { call, situation, points, explosives } of scores.calls) {
    const net = fits.get(keyOf(call, situation));
    byCall.get(call)?.set(situation, {
      points: points.mean / SNAPS_PER_SCORE,
      fit: net ? trust * net.mean + (1 - trust) * net.low : 0,
      explosives: explosives.mean / SNAPS_PER_EXPLOSIVES,
      plainlyWrong: isPlainlyWrong(net),
    });
  }
  return calls.map(({ name }) => byCall.get(name) ?? new Map());
}

const [SNAPS_PER_SCORE, SNAPS_PER_EXPLOSIVES] = [10, 100];

function keyOf(call: string, situation: string): string {
  return JSON.stringify([call, situation]);
}
