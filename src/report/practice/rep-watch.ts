import type { Family } from '../../game/families.ts';
import type { LookKind } from '../../game/look-kinds.ts';

/**
 * What the staff watches on a repetition: the one thing the look asks of the call.
 *
 * Common practice, no source.
 */
export function repWatch(family: Family, look: LookKind): string {
  return BY_FAMILY[family][look] ?? BY_LOOK[look];
}

const BY_LOOK: Readonly<Record<LookKind, string>> = {
  run: 'every gap fitted, both edges contained',
  quarterback_run: 'who has the quarterback',
  screen: 'rushers retrace, the man on the back goes with him',
  quick: 'tackle the catch; hands up in the lanes',
  dropback: 'lanes kept, nobody past the quarterback',
  wide_release: 'who has the back to the flat',
  inside_release: 'who has the back through the line',
  max_protection: 'nobody is free: lanes kept, coverage holds',
  empty: 'the empty check is made before the snap',
  deep_shot: 'deep men stay deeper than the deepest',
  trips_deep: 'who has number three deep',
  movement: 'contain keeps the quarterback inside',
};

const PEEL: Partial<Record<LookKind, string>> = {
  wide_release: 'the edge takes the back who goes wide; the inside rusher replaces contain',
  inside_release: 'the man the back engages takes him when he slips inside',
  screen: 'the edge stays with the back; inside rushers retrace',
  run: 'peel men play the run first',
};

const BY_FAMILY: Readonly<Record<Family, Partial<Record<LookKind, string>>>> = {
  base: {},
  three_under: {
    quick: 'seam men expand to the flat at 6 to 8 yards',
    wide_release: 'the seam man rallies to the flat',
  },
  four_under: {
    trips_deep: 'the trips check is made; who carries number three',
    screen: 'the corner squats on the flat',
  },
  man_free: { quarterback_run: 'backs are turned: contain and the box keep the quarterback' },
  hot: { screen: 'eyes on the quarterback; rally from inside out', quick: 'no hot man is below 5 yards at the snap' },
  zero: { screen: 'the man on the back runs with him', quick: 'inside leverage; the ball goes outside' },
  peel: PEEL,
  peel_spy: { ...PEEL, quarterback_run: 'the spy mirrors and goes when the quarterback goes' },
  add_on: {
    ...PEEL,
    screen: 'the back does not block: the add stays in the deep middle',
    max_protection: 'the back blocks: the add goes through the first open lane away from the turn',
    dropback: 'the back blocks: the add goes; he checks and releases: the add stays deep',
  },
};
