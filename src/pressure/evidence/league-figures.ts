import type { SituationId } from '../../game/situations.ts';
import type { Measured } from './open-data-table.ts';

/**
 * Field zones that change what pressure is worth. The staff's own cut-offs decide where the red zone and the goal line
 * start.
 */
export const PRESSURE_ZONES = ['open_field', 'red_zone', 'goal_line'] as const;
/** One word of {@link PRESSURE_ZONES}. */
export type PressureZone = (typeof PRESSURE_ZONES)[number];

/** Down and distance in the classes the league was measured in. */
export const DISTANCES = [
  'first',
  'second_short',
  'second_medium',
  'second_long',
  'late_short',
  'late_medium',
  'late_long',
] as const;
/** One word of {@link DISTANCES}; `late` is third and fourth down. */
export type Distance = (typeof DISTANCES)[number];

/*
 * Points saved per ten dropbacks against four rushers in the same down, distance, field zone and score.
 *
 * License of this file's figures: CC BY-SA 4.0. Play-by-play: nflverse (CC BY 4.0). Charting: FTN Data via nflverse
 * (CC BY-SA 4.0). Participation: NFL NextGenStats via nflverse (CC BY-SA 4.0). Columns selected, renamed and joined.
 */

/** Inside the 20 less outside: man with nobody deep and man with one deep over 2019-23, the others over 2022 alone. */
export const ZONE_CONTRASTS: readonly Measured[] = [
  { value: -2.75, error: 0.78 }, // six or more, nobody deep, 2019-23: -1.55 +- 0.56 inside, +1.20 +- 0.55 outside
  { value: -1.69, error: 0.53 }, // five, man with one deep, 2019-23: -1.05 +- 0.50 inside, +0.64 +- 0.17 outside
  { value: -2.33, error: 1.3 }, // five, zone, 2022: -1.56 +- 1.25 inside, +0.77 +- 0.34 outside
  { value: -1.45, error: 2.51 }, // six, man with one deep, 2022: -1.85 +- 2.36 inside, -0.40 +- 0.84 outside
];

/**
 * The part of the zone contrast that is kept. It was picked after looking at about sixty splits: of sixty that are all
 * chance the largest is expected 2.57 standard errors from zero (the mean of the largest of sixty absolute normal values),
 * and 3.5 were seen, so 1 - (2.57 / 3.5) squared is kept.
 */
export const ZONE_KEPT = 0.46;

/** Share of the league's dropbacks inside the 20, 2022: outside it a pressure is worth that part of the contrast more. */
export const INSIDE_SHARE = 0.124;

/** All pressures by down and distance (1-3, 4-6, 7 and more yards), 2022. */
export const DISTANCE_FIGURES: Readonly<Record<Distance, Measured>> = {
  first: { value: 0.78, error: 0.36 },
  second_short: { value: 0.9, error: 1.05 },
  second_medium: { value: -0.16, error: 0.77 },
  second_long: { value: -0.02, error: 0.49 },
  late_short: { value: -2.6, error: 1.47 },
  late_medium: { value: 0.5, error: 1.13 },
  late_long: { value: 0.6, error: 0.81 },
};

/** All pressures of five and six by answer, rushers counted by people, 2022-25. */
export const ANSWER_FIGURES: Readonly<Record<'screen' | 'play_action' | 'straight', Measured>> = {
  screen: { value: -0.54, error: 0.37 },
  play_action: { value: 0.6, error: 0.26 },
  straight: { value: 0.09, error: 0.18 },
};

/** Screens by what is played behind five and six rushers, 2019-23, against screens on four rushers. */
export const SCREEN_FIGURES: Readonly<Record<'zone' | 'one_deep' | 'none_deep', Measured>> = {
  zone: { value: -0.9, error: 0.45 },
  one_deep: { value: 1.2, error: 0.63 },
  none_deep: { value: -1.4, error: 1.32 },
};

/**
 * Standard deviation between offenses of what five or more are worth against four, per ten dropbacks, with the upper end
 * of its 95% interval (professional games, 2019-23: 0.6, from 0 to 0.95). Four games of an opponent teach almost nothing
 * of it. At other levels nothing is measured, and the upper end is used.
 */
export const BETWEEN_OFFENSES = { measured: 0.6, upper: 0.95 } as const;

interface TypicalZones {
  readonly redZone: number;
  readonly goalLine: number;
}

/** Shares of a situation's snaps in the red zone outside the five, and inside the five, league of 2022. */
export const TYPICAL_ZONES: Readonly<Record<SituationId, TypicalZones>> = {
  first_ten: { redZone: 0.076, goalLine: 0 },
  first_long: { redZone: 0.034, goalLine: 0 },
  first_short: { redZone: 0.115, goalLine: 0 },
  first_goal: { redZone: 0.484, goalLine: 0.516 },
  second_short: { redZone: 0.11, goalLine: 0.157 },
  second_medium: { redZone: 0.122, goalLine: 0.057 },
  second_long: { redZone: 0.108, goalLine: 0 },
  third_short: { redZone: 0.116, goalLine: 0.098 },
  third_medium: { redZone: 0.129, goalLine: 0.049 },
  third_long: { redZone: 0.119, goalLine: 0 },
  fourth_short: { redZone: 0.162, goalLine: 0.14 },
  fourth_medium: { redZone: 0.181, goalLine: 0.026 },
  fourth_long: { redZone: 0.142, goalLine: 0 },
};
