/** Families of the open-data table; each is a count of rushers and a charted coverage, not the family itself. */
export const OPEN_FAMILIES = [
  'base',
  'three_under',
  'four_under',
  'five_c6_c4',
  'man_free_five',
  'hot',
  'six_post',
  'zero',
  'seven_plus',
] as const;
/** One word of {@link OPEN_FAMILIES}. */
export type OpenFamily = (typeof OPEN_FAMILIES)[number];

/** Answers of the open-data table; `quick` is thrown in 2.0 seconds or less, `dropback` the rest with its sacks. */
export const OPEN_ANSWERS = ['screen', 'quick', 'dropback', 'play_action', 'rpo_pass'] as const;
/** One word of {@link OPEN_ANSWERS}. */
export type OpenAnswer = (typeof OPEN_ANSWERS)[number];

/** One cell: snaps behind it, shrunk shares of loss, stop, gain, explosive, takeaway, and shrunk points a snap. */
export interface OpenCell {
  readonly snaps: number;
  /** In the order of the outcome kinds; they sum to 1 but for rounding. */
  readonly shares: readonly [number, number, number, number, number];
  /** Expected points added a snap, plus is good for the offense, and its standard error. */
  readonly points: number;
  readonly error: number;
}

/** A figure with its standard error. */
export interface Measured {
  readonly value: number;
  readonly error: number;
}

/**
 * A family's difference from four rushers within down, distance, field zone and score: points a snap (plus is good for
 * the offense) and shares of the snaps, 0 to 1.
 */
export interface AdjustedDifference {
  readonly points: Measured;
  readonly success: Measured;
  readonly loss: Measured;
  readonly explosive: Measured;
  readonly takeaway: Measured;
}

/**
 * Outcome shares by family and answer, professional games of 2022-23, each cell pulled to the sum of its family's and
 * its answer's margin.
 *
 * Licence of this file's figures: CC BY-SA 4.0. Play-by-play: nflverse (CC BY 4.0). Charting: FTN Data via nflverse
 * (CC BY-SA 4.0). Participation: NFL NextGenStats via nflverse (CC BY-SA 4.0). Columns selected, renamed and joined;
 * families, answers and outcomes derived.
 */
export const OPEN_TABLE: Readonly<Record<OpenFamily, Readonly<Record<OpenAnswer, OpenCell>>>> = {
  base: {
    screen: { snaps: 2242, shares: [0.1128, 0.4599, 0.3769, 0.0388, 0.0116], points: -0.1216, error: 0.0247 },
    quick: { snaps: 2580, shares: [0.0151, 0.414, 0.5357, 0.0198, 0.0155], points: 0.0968, error: 0.0243 },
    dropback: { snaps: 17149, shares: [0.0763, 0.4573, 0.353, 0.0793, 0.0341], points: -0.0196, error: 0.0115 },
    play_action: { snaps: 3779, shares: [0.0595, 0.3776, 0.3948, 0.1408, 0.0273], points: 0.1967, error: 0.0227 },
    rpo_pass: { snaps: 430, shares: [0.0535, 0.3837, 0.4442, 0.093, 0.0256], points: 0.1523, error: 0.0693 },
  },
  three_under: {
    screen: { snaps: 348.5, shares: [0.1184, 0.4307, 0.3654, 0.0666, 0.019], points: -0.058, error: 0.0613 },
    quick: { snaps: 428.7, shares: [0.019, 0.35, 0.5845, 0.025, 0.0215], points: 0.1606, error: 0.0549 },
    dropback: { snaps: 1572.6, shares: [0.1252, 0.383, 0.3694, 0.0917, 0.0307], points: -0.0191, error: 0.041 },
    play_action: { snaps: 887.6, shares: [0.1032, 0.3613, 0.3781, 0.1236, 0.0338], points: 0.0326, error: 0.0468 },
    rpo_pass: { snaps: 77.3, shares: [0.1087, 0.3342, 0.4597, 0.0714, 0.026], points: 0.0237, error: 0.143 },
  },
  four_under: {
    screen: { snaps: 52.1, shares: [0.1406, 0.4039, 0.3851, 0.0399, 0.0305], points: -0.2375, error: 0.1078 },
    quick: { snaps: 39.1, shares: [0.0134, 0.3722, 0.5704, 0.0204, 0.0236], points: -0.0055, error: 0.1076 },
    dropback: { snaps: 166.5, shares: [0.1265, 0.4005, 0.3634, 0.0684, 0.0413], points: -0.2425, error: 0.0962 },
    play_action: { snaps: 125.7, shares: [0.1101, 0.3678, 0.3895, 0.0925, 0.0401], points: -0.1525, error: 0.0973 },
    rpo_pass: { snaps: 11.3, shares: [0.1037, 0.3625, 0.4518, 0.0455, 0.0364], points: -0.1692, error: 0.1765 },
  },
  five_c6_c4: {
    screen: { snaps: 133.1, shares: [0.0962, 0.4817, 0.3547, 0.0512, 0.0162], points: -0.0584, error: 0.0817 },
    quick: { snaps: 97.3, shares: [0.0163, 0.4003, 0.5504, 0.0193, 0.0136], points: 0.1709, error: 0.0825 },
    dropback: { snaps: 492.2, shares: [0.12, 0.4261, 0.3608, 0.0654, 0.0276], points: -0.0618, error: 0.065 },
    play_action: { snaps: 248.6, shares: [0.103, 0.3978, 0.381, 0.0933, 0.0249], points: 0.0461, error: 0.0727 },
    rpo_pass: { snaps: 24.3, shares: [0.1002, 0.4025, 0.4274, 0.0476, 0.0223], points: 0.0074, error: 0.1621 },
  },
  man_free_five: {
    screen: { snaps: 196.3, shares: [0.171, 0.4478, 0.2882, 0.0726, 0.0204], points: -0.0806, error: 0.0706 },
    quick: { snaps: 338.8, shares: [0.0186, 0.4325, 0.4992, 0.0396, 0.0102], points: 0.176, error: 0.0591 },
    dropback: { snaps: 2026.2, shares: [0.1149, 0.4525, 0.3038, 0.1003, 0.0284], points: -0.0564, error: 0.0374 },
    play_action: { snaps: 574.8, shares: [0.1068, 0.4051, 0.3284, 0.1318, 0.0279], points: 0.0261, error: 0.0542 },
    rpo_pass: { snaps: 65.1, shares: [0.1118, 0.4201, 0.3623, 0.0758, 0.03], points: -0.007, error: 0.1454 },
  },
  hot: {
    screen: { snaps: 40.3, shares: [0.1332, 0.3756, 0.4176, 0.0613, 0.0123], points: -0.0694, error: 0.1082 },
    quick: { snaps: 49, shares: [0.0153, 0.3687, 0.5585, 0.0372, 0.0204], points: 0.1131, error: 0.1038 },
    dropback: { snaps: 184, shares: [0.146, 0.3812, 0.3547, 0.0898, 0.0282], points: -0.0929, error: 0.093 },
    play_action: { snaps: 144.6, shares: [0.1287, 0.3626, 0.3727, 0.112, 0.024], points: -0.0096, error: 0.0935 },
    rpo_pass: { snaps: 5.4, shares: [0.1194, 0.3437, 0.449, 0.0627, 0.0252], points: -0.0261, error: 0.1761 },
  },
  six_post: {
    screen: { snaps: 60.4, shares: [0.1859, 0.441, 0.2666, 0.0836, 0.0228], points: -0.1002, error: 0.0919 },
    quick: { snaps: 73, shares: [0.0206, 0.4221, 0.4826, 0.0525, 0.0223], points: 0.1609, error: 0.0869 },
    dropback: { snaps: 619.9, shares: [0.1318, 0.4531, 0.2755, 0.1135, 0.026], points: -0.0816, error: 0.062 },
    play_action: { snaps: 223.6, shares: [0.1255, 0.4114, 0.2998, 0.1388, 0.0246], points: -0.0029, error: 0.0756 },
    rpo_pass: { snaps: 20.3, shares: [0.1091, 0.4111, 0.3635, 0.0941, 0.0223], points: -0.0057, error: 0.1639 },
  },
  zero: {
    screen: { snaps: 75.2, shares: [0.0979, 0.4689, 0.3614, 0.0616, 0.0103], points: -0.0442, error: 0.0883 },
    quick: { snaps: 221.8, shares: [0.0073, 0.4689, 0.4815, 0.0272, 0.0151], points: 0.1522, error: 0.0707 },
    dropback: { snaps: 428.4, shares: [0.1138, 0.4781, 0.3114, 0.0661, 0.0307], points: -0.1277, error: 0.0672 },
    play_action: { snaps: 219.2, shares: [0.1097, 0.4322, 0.3567, 0.0764, 0.0249], points: -0.01, error: 0.0744 },
    rpo_pass: { snaps: 25.1, shares: [0.0865, 0.4526, 0.3843, 0.0466, 0.0299], points: -0.0273, error: 0.1619 },
  },
  seven_plus: {
    screen: { snaps: 36, shares: [0.0686, 0.492, 0.3273, 0.0867, 0.0254], points: -0.0153, error: 0.1058 },
    quick: { snaps: 69, shares: [0.0077, 0.4884, 0.4477, 0.0355, 0.0207], points: 0.1864, error: 0.0972 },
    dropback: { snaps: 211, shares: [0.0781, 0.497, 0.2797, 0.1047, 0.0405], points: -0.0629, error: 0.0881 },
    play_action: { snaps: 162, shares: [0.0715, 0.4497, 0.3161, 0.1324, 0.0303], points: 0.0796, error: 0.0889 },
    rpo_pass: { snaps: 11, shares: [0.0609, 0.4772, 0.3408, 0.0715, 0.0496], points: 0.0085, error: 0.1727 },
  },
};

/** Difference of each family from four rushers in the same situations, all answers, 2019-23. */
export const OPEN_DIFFERENCES: Readonly<Record<Exclude<OpenFamily, 'base'>, AdjustedDifference>> = {
  three_under: {
    points: { value: -0.0343, error: 0.018 },
    success: { value: -0.0049, error: 0.0058 },
    loss: { value: 0.0298, error: 0.0027 },
    explosive: { value: 0.003, error: 0.0034 },
    takeaway: { value: 0, error: 0.0019 },
  },
  four_under: {
    points: { value: -0.1302, error: 0.0482 },
    success: { value: -0.0291, error: 0.016 },
    loss: { value: 0.0335, error: 0.0059 },
    explosive: { value: -0.0071, error: 0.0091 },
    takeaway: { value: 0.0047, error: 0.0054 },
  },
  five_c6_c4: {
    points: { value: -0.0938, error: 0.031 },
    success: { value: -0.0344, error: 0.0099 },
    loss: { value: 0.0318, error: 0.0039 },
    explosive: { value: -0.0101, error: 0.0056 },
    takeaway: { value: 0.0026, error: 0.0034 },
  },
  man_free_five: {
    points: { value: -0.0448, error: 0.0191 },
    success: { value: -0.0407, error: 0.0055 },
    loss: { value: 0.026, error: 0.0027 },
    explosive: { value: 0.0146, error: 0.0033 },
    takeaway: { value: -0.0015, error: 0.0018 },
  },
  hot: {
    points: { value: -0.0521, error: 0.0539 },
    success: { value: -0.036, error: 0.0159 },
    loss: { value: 0.0429, error: 0.007 },
    explosive: { value: 0.0124, error: 0.01 },
    takeaway: { value: 0.0004, error: 0.0051 },
  },
  six_post: {
    points: { value: -0.0656, error: 0.032 },
    success: { value: -0.0598, error: 0.0089 },
    loss: { value: 0.0295, error: 0.0047 },
    explosive: { value: 0.0314, error: 0.0058 },
    takeaway: { value: 0.0011, error: 0.0031 },
  },
  zero: {
    points: { value: -0.0011, error: 0.0444 },
    success: { value: -0.0234, error: 0.0109 },
    loss: { value: 0.01, error: 0.0044 },
    explosive: { value: 0.0118, error: 0.0048 },
    takeaway: { value: -0.0028, error: 0.0035 },
  },
  seven_plus: {
    points: { value: 0.0454, error: 0.0512 },
    success: { value: -0.0336, error: 0.0131 },
    loss: { value: 0.0113, error: 0.0058 },
    explosive: { value: 0.038, error: 0.0078 },
    takeaway: { value: -0.0013, error: 0.0042 },
  },
};

/**
 * What an outcome against a family is worth beyond the same outcome against four rushers, in points, by outcome kind
 * (same down, distance and field zone, 2019-23).
 */
export const OPEN_PREMIUMS: Readonly<Record<OpenFamily, readonly [number, number, number, number, number]>> = {
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
export const OPEN_RUN_SHARES: readonly [number, number, number, number, number] = [
  0.0952, 0.4059, 0.4154, 0.0774, 0.0061,
];

/** Outcome shares against four rushers, all answers, 2019-23: where the adjusted differences start from. */
export const OPEN_BASE_SHARES: readonly [number, number, number, number, number] = [0.069, 0.43, 0.392, 0.079, 0.029];
