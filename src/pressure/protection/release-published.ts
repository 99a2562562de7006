import type { PassAnswer } from '../../game/answers.ts';
import type { Level } from '../../game/call-library.ts';
import type { WeekSettings } from '../../game/week-settings.ts';

/** Release times of one answer as a log-normal curve, and how much an offense of its own differs from it. */
export interface PublishedRelease {
  /** Mean and standard deviation of the logarithm of the seconds from snap to release. */
  readonly mu: number;
  readonly sigma: number;
  /** Throws behind the curve. */
  readonly throws: number;
  /** Throws of one offense that weigh as much as the curve: spread within an offense over spread between offenses. */
  readonly worth: number;
}

/**
 * Release times in open play data of professional offenses: screens, movement (play action out of the pocket) 2022-23;
 * straight throws of 2022 out within 2.0 s (quick), later and under 20 yards (dropback), 20 yards and more (deep shot).
 * Throws only: sacks and scrambles have no time. The curves fit roughly, screens worst: they have two humps.
 *
 * Play-by-play: nflverse (CC BY 4.0). Charting: FTN Data via nflverse (CC BY-SA 4.0). Participation: NFL NextGenStats via
 * nflverse (CC BY-SA 4.0). Columns selected, renamed and joined.
 */
export const PUBLISHED_RELEASE: Readonly<Record<PassAnswer, PublishedRelease>> = {
  screen: { mu: 0.571, sigma: 0.376, throws: 3710, worth: 14 },
  quick: { mu: 0.533, sigma: 0.169, throws: 2179, worth: 29 },
  dropback: { mu: 1.044, sigma: 0.264, throws: 9365, worth: 41 },
  deep_shot: { mu: 1.149, sigma: 0.278, throws: 1588, worth: 19 },
  movement: { mu: 1.319, sigma: 0.282, throws: 1741, worth: 14 },
};

/** Seconds of the usual sack: published medians 2.7 to 2.8 (Cooper, Under Pressure: By the Seconds, 2011). */
export const USUAL_SACK_SECONDS = 2.75;

/** How much longer the ball is held than in professional play; no published figure was found; judgment. */
const LEVEL_FACTOR: Readonly<Record<Level, number>> = { high_school: 1.06, college: 1.03, pro: 1 };

/** The coach's view of how fast they handle the ball; judgment. */
const SPEED_FACTOR: Readonly<Record<WeekSettings['their_speed'], number>> = { slow: 1.08, average: 1, fast: 0.93 };

/** Offenses below the professional level differ more, so the curve is worth half as much against their own times. */
const WORTH_FACTOR: Readonly<Record<Level, number>> = { high_school: 0.5, college: 0.5, pro: 1 };

/** The published curve of an answer at a level and for an offense of this speed. */
export function publishedRelease(
  answer: PassAnswer,
  level: Level,
  speed: WeekSettings['their_speed'],
): PublishedRelease {
  const curve = PUBLISHED_RELEASE[answer];
  const mu = curve.mu + Math.log(LEVEL_FACTOR[level] * SPEED_FACTOR[speed]);
  return { ...curve, mu, worth: curve.worth * WORTH_FACTOR[level] };
}

/** Seconds after which a sack usually comes at this level. */
export function sackSeconds(level: Level): number {
  return USUAL_SACK_SECONDS * LEVEL_FACTOR[level];
}

/**
 * How the logarithm of the release moves with the rushers seen at the snap, against all throws: the ball comes out sooner
 * when more come. Straight throws of 2022-23 by rushers (open data as above); other answers hardly move.
 */
export function releaseShift(answer: PassAnswer, rushers: number): number {
  if (answer !== 'dropback' && answer !== 'deep_shot') return 0;
  if (rushers <= 3) return 0.068;
  return STRAIGHT_SHIFT[Math.min(rushers, 7) - 4] ?? 0;
}

/** Four, five, six, seven and more. */
const STRAIGHT_SHIFT = [0.017, -0.054, -0.089, -0.133];
