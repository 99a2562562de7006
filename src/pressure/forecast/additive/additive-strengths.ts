import type { Target } from '../forecast-result.ts';

/** How strongly the coefficients of a target are pulled to 0. */
export interface AdditiveStrengths {
  /** Multiplies the pulls of what any offense does. */
  readonly archive: number;
  /** Pull on what this offense does differently from the archive. */
  readonly opponent: number;
  /** Pull on what this offense does where there is no archive. */
  readonly alone: number;
}

/**
 * Chosen by mean log loss of the next game, four games to the next, on games up to week 11 of open professional play
 * data of 2022 (play-by-play nflverse, CC BY 4.0; charting FTN Data and participation NFL NextGenStats via nflverse, CC
 * BY-SA 4.0), from a grid of doublings, with the look; half or double of each changes it by at most .001. Later weeks
 * agree. Targets from `protectors` on are in no open data: judgement, near the steadiest of the others.
 */
export const ADDITIVE_STRENGTHS: Readonly<Record<Target, AdditiveStrengths>> = {
  answer: { archive: 4, opponent: 32, alone: 6 },
  run_or_pass: { archive: 4, opponent: 28, alone: 4 },
  screen: { archive: 12, opponent: 32, alone: 16 },
  quick_release: { archive: 24, opponent: 128, alone: 16 },
  motion: { archive: 24, opponent: 96, alone: 16 },
  protectors: { archive: 12, opponent: 64, alone: 16 },
  slide_to_back: { archive: 12, opponent: 64, alone: 16 },
  slide_to_field: { archive: 12, opponent: 64, alone: 16 },
  slide_to_strength: { archive: 12, opponent: 64, alone: 16 },
  back_job: { archive: 12, opponent: 64, alone: 16 },
};
