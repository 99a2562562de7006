import { READER_GAMES } from './habits.ts';

import type { MenuSettings } from './input.ts';

/** A situation as far as it decides how often pressure is sent there. */
export interface RatedSituation {
  readonly expectedSnaps: number;
  /** Right less wrong of the pressures offered, on average, as a share of the snaps. */
  readonly net: number;
}

/** A lead of this much over the other situations bends the rate by three quarters of what it may. Judgment. */
const FULL_PULL = 0.25;

/**
 * The most a rate bends, in standard errors of the difference between two halves of four games of our film. Measured with
 * late downs against early ones, the plainest bend there is: of 40 invented films our own search calls 2 where nothing
 * bends, 1 at this bend, 4 at one and a half times, 10 at twice, 16 at two and a half times as much.
 */
const QUIET_ERRORS = 0.5;

/** The bend that four games of our film do not show. */
function quietBend(rate: number, snaps: number): number {
  return QUIET_ERRORS * Math.sqrt((4 * rate * (1 - rate)) / Math.max(1, READER_GAMES * snaps));
}

/**
 * How often five or more are sent in each situation: around our own film's rate, a little more where the theories offered
 * are right more often, smoothly, inside the band and by no more than four games of film show, so that down and distance do not read our
 * pressure. The mean over
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
  const room = Math.min(band, center - least, most - center, quietBend(center, snaps));
  const bends = situations.map(({ net }) => room * Math.tanh((net - mean) / FULL_PULL));
  const shift = over((_, s) => bends[s] as number);
  return bends.map((bend) => Math.min(most, Math.max(least, center + bend - shift)));
}
