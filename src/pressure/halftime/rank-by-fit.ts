import type { CallFit } from '../fit/fit-result.ts';
import type { MenuCall } from '../menu/result.ts';

/** Right less wrong of a call in one situation. */
export interface CallNet extends Pick<CallFit, 'call' | 'situation'> {
  readonly net: Pick<CallFit['net'], 'mean'>;
}

/** The calls' fit on Sunday and now. */
export interface FitsThenAndNow {
  readonly sunday: readonly CallNet[];
  readonly halftime: readonly CallNet[];
}

/** A call with its fit and its rank on Sunday. */
interface Ranked {
  readonly fit: { readonly before: number; readonly now: number } | null;
  readonly rankBefore: number;
}

/**
 * Right less wrong of a call over the snaps on which Sunday's sheet calls it; null where the plan has no fit.
 *
 * @param snapsOf - snaps a game by situation
 */
export function fitWhereCalled(
  { call, mix }: Pick<MenuCall, 'call' | 'mix'>,
  snapsOf: ReadonlyMap<string, number>,
  { sunday, halftime }: FitsThenAndNow,
): Ranked['fit'] {
  const netOver = (fits: readonly CallNet[]) => {
    const parts = mix.flatMap(({ situation, share }) => {
      const found = fits.find((fit) => fit.call === call && fit.situation === situation);
      return found ? [{ net: found.net.mean, snaps: share * (snapsOf.get(situation) ?? 0) }] : [];
    });
    const snaps = parts.reduce((sum, part) => sum + part.snaps, 0);
    return snaps === 0 ? null : parts.reduce((sum, part) => sum + part.net * part.snaps, 0) / snaps;
  };
  const [before, now] = [netOver(sunday), netOver(halftime)];
  return before === null || now === null ? null : { before, now };
}

/** Calls with the best fit now first; without a fit they stay as they are. Ranks on Sunday follow the fit on Sunday. */
export function byFit<T extends Ranked>(calls: readonly T[]): readonly T[] {
  if (calls.every(({ fit }) => fit === null)) return calls;
  const ordered = (when: 'before' | 'now') =>
    [...calls].sort(
      (a, b) => (b.fit?.[when] ?? Number.NEGATIVE_INFINITY) - (a.fit?.[when] ?? Number.NEGATIVE_INFINITY),
    );
  const sunday = ordered('before');
  return ordered('now').map((call) => ({ ...call, rankBefore: sunday.indexOf(call) + 1 }));
}
