import type { OpenAnswer } from '../../game/answers.ts';
import type { OpenFamily } from '../../game/families.ts';

/** Shares or points by outcome kind: loss, stop, gain, explosive, takeaway. */
type ByKind = readonly [number, number, number, number, number];

/** A figure with its standard error. */
export interface Measured {
  readonly value: number;
  readonly error: number;
}

/**
 * A family's difference from four rushers within down, distance, field zone and score: points a snap (plus is good for
 * the offense) and share of explosives, 0 to 1.
 */
export interface AdjustedDifference {
  readonly points: Measured;
  readonly explosive: Measured;
}

/**
 * Outcome shares by answer against four rushers, professional games of 2022-23.
 *
 * License of this file's figures: CC BY-SA 4.0. Play-by-play: nflverse (CC BY 4.0). Charting: FTN Data via nflverse
 * (CC BY-SA 4.0). Participation: NFL NextGenStats via nflverse (CC BY-SA 4.0). Columns selected, renamed and joined;
 * families, answers and outcomes derived.
 */
export const OPEN_BASE: Readonly<Record<OpenAnswer, ByKind>> = {
  screen: [0.1128, 0.4599, 0.3769, 0.0388, 0.0116],
  quick: [0.0151, 0.414, 0.5357, 0.0198, 0.0155],
  dropback: [0.0763, 0.4573, 0.353, 0.0793, 0.0341],
  play_action: [0.0595, 0.3776, 0.3948, 0.1408, 0.0273],
};

/** Difference of each family from four rushers in the same situations, all answers, 2019-23. */
export const OPEN_DIFFERENCES: Readonly<Record<Exclude<OpenFamily, 'base'>, AdjustedDifference>> = {
  three_under: {
    points: { value: -0.0343, error: 0.018 },
    explosive: { value: 0.003, error: 0.0034 },
  },
  four_under: {
    points: { value: -0.1302, error: 0.0482 },
    explosive: { value: -0.0071, error: 0.0091 },
  },
  five_c6_c4: {
    points: { value: -0.0938, error: 0.031 },
    explosive: { value: -0.0101, error: 0.0056 },
  },
  man_free_five: {
    points: { value: -0.0448, error: 0.0191 },
    explosive: { value: 0.0146, error: 0.0033 },
  },
  hot: {
    points: { value: -0.0521, error: 0.0539 },
    explosive: { value: 0.0124, error: 0.01 },
  },
  six_post: {
    points: { value: -0.0656, error: 0.032 },
    explosive: { value: 0.0314, error: 0.0058 },
  },
  zero: {
    points: { value: -0.0011, error: 0.0444 },
    explosive: { value: 0.0118, error: 0.0048 },
  },
  seven_plus: {
    points: { value: 0.0454, error: 0.0512 },
    explosive: { value: 0.038, error: 0.0078 },
  },
};

/**
 * What an outcome against a family is worth beyond the same outcome against four rushers, in points, by outcome kind
 * (same down, distance and field zone, 2019-23).
 */
export const OPEN_PREMIUMS: Readonly<Record<OpenFamily, ByKind>> = {
  base: [0, 0, 0, 0, 0],
  three_under: [-0.069, -0.061, 0.083, -0.016, -0.851],
  four_under: [-0.068, -0.052, 0.043, -0.208, -0.809],
  five_c6_c4: [-0.062, -0.041, 0.062, 0.089, -0.234],
  man_free_five: [-0.06, -0.08, 0.109, 0.086, -0.497],
  hot: [-0.117, -0.112, 0.08, 0.311, -0.45],
  six_post: [-0.131, -0.087, 0.125, 0.086, -0.189],
  zero: [-0.177, -0.064, -0.026, 0.78, -0.573],
  seven_plus: [-0.261, -0.091, 0.08, 0.395, -0.259],
};

/** Runs against six and seven in the box, 2022-25, rushers and coverage unknown: shares of the outcome kinds. */
export const OPEN_RUN_SHARES: ByKind = [0.0952, 0.4059, 0.4154, 0.0774, 0.0061];
