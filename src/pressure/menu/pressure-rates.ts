import type { MenuSettings } from './input.ts';

/** A situation as far as it decides how often pressure is sent there. */
export interface RatedSituation {
  readonly expectedSnaps: number;
  /** Right less wrong of the pressures offered, on average, as a share of the snaps. */
  readonly net: number;
}

/** A lead of this much over the other situations bends the rate by three quarters of the band. Judgment. */
const FULL_PULL = 0.25;

/**
 * The part of the band that is used. Judgment, with this behind it: of 40 invented films of four games our own search
 * calls the rates read on 2 where nothing bends, on 16 where half of a band of 15 points is used up for late downs against
 * early ones, on all 40 where the whole band is; on 1 of 20 under each of the demo's weeks, where fit bends them by less.
 */
const QUIET_PART = 0.5;

/**
 * How often five or more are sent in each situation: around our own film's rate, a little more where the theories offered
 * are right more often, smoothly and inside the band, so that down and distance do not read our pressure. The mean over
 * the snaps is our own rate. Without film the middle of what week.yaml allows takes its place.
 */
export function pressureRates(
  situations: readonly RatedSituation[],
  { least, most, band }: MenuSettings['pressure_rate'],
  ownRate: number | null,
): readonly number[] {
  const center = Math.min(most, Math.max(least, ownRate ?? (least + most) / 2));
  const snaps = situations.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0);
  const over = (of: (situation: RatedSituation, s: number) => number) =>
    snaps === 0 ? 0 : situations.reduce((sum, one, s) => sum + one.expectedSnaps * of(one, s), 0) / snaps;
  const mean = over(({ net }) => net);
  const room = Math.min(band, center - least, most - center);
  const bends = situations.map(({ net }) => QUIET_PART * room * Math.tanh((net - mean) / FULL_PULL));
  const shift = over((_, s) => bends[s] as number);
  return bends.map((bend) => Math.min(most, Math.max(least, center + bend - shift)));
}
