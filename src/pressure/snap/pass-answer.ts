import type { PassAnswer } from '../../game/answers.ts';

/**
 * Depth of the passer by answer, in yards: a gun catch at 5, three steps from the gun or five from under the center 7,
 * seven steps near 9 (published drop depths: 3 steps 5 yards, 5 steps 7 yards; the rest common practice).
 */
export const PASSER_DEPTH: Readonly<Record<PassAnswer, number>> = {
  screen: 7,
  quick: 5,
  dropback: 7,
  deep_shot: 8.5,
  movement: 7,
};

/** Seconds a passer who leaves the spot costs every rusher; judgment. */
export const CHASE_DELAY: Readonly<Record<PassAnswer, number>> = {
  screen: 0,
  quick: 0,
  dropback: 0,
  deep_shot: 0,
  movement: 0.4,
};
