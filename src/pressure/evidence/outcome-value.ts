import type { Answer } from '../../game/answers.ts';
import { ANSWER_TABLE, isPass } from '../../game/answers.ts';
import type { Family } from '../../game/families.ts';
import { familyFacts } from '../../game/families.ts';
import { OPEN_PREMIUMS } from './open-data-table.ts';

/** Points of one outcome kind after another: loss, stop, gain, explosive, takeaway. */
export type OutcomeValues = readonly [number, number, number, number, number];

type ByDown = readonly [OutcomeValues, OutcomeValues, OutcomeValues, OutcomeValues];
type ValuedAnswer = (typeof ANSWER_TABLE)[Answer]['valuedAs'];

/**
 * Expected points added by an outcome kind, by answer and down, professional games (screen and movement 2022-25, quick
 * and dropback 2022-23, run 2019-25; movement is play action). Cells of under 15 snaps take the value of all straight
 * dropbacks on that down. Same license and sources as the open-data table (CC BY-SA 4.0).
 */
const VALUES: Readonly<Record<ValuedAnswer, ByDown>> = {
  screen: [
    [-0.98, -0.43, 0.45, 2, -6.39],
    [-1.09, -0.51, 0.75, 2.45, -5.58],
    [-1.41, -0.71, 1.74, 3.23, -4.15],
    [-3.04, -2.61, 2.52, 4.13, -2.72],
  ],
  quick: [
    [-1.01, -0.45, 0.45, 1.82, -5.3],
    [-0.97, -0.5, 0.74, 2.19, -6.35],
    [-1.77, -0.97, 1.53, 2.87, -4.61],
    [-3.04, -2.81, 2.49, 4.13, -2.72],
  ],
  dropback: [
    [-1.09, -0.43, 0.54, 2.07, -4.75],
    [-1.31, -0.53, 0.87, 2.46, -4.52],
    [-1.79, -1.01, 1.81, 3.24, -4.1],
    [-3.06, -2.52, 2.84, 4.24, -2.79],
  ],
  movement: [
    [-1.19, -0.5, 0.67, 2.09, -5.19],
    [-1.47, -0.66, 1.01, 2.43, -4.7],
    [-1.93, -1.38, 1.37, 2.93, -4.75],
    [-3.81, -3.47, 2.7, 4.51, -2.72],
  ],
  run: [
    [-0.94, -0.41, 0.25, 1.38, -5.52],
    [-1.1, -0.48, 0.38, 1.65, -5.18],
    [-1.76, -0.95, 0.8, 1.97, -5.08],
    [-3.5, -3.31, 2.05, 3.56, -5.46],
  ],
};

/**
 * What each outcome kind is worth to the offense, in points, when it answers so on that down. Professional scoring: for
 * a high-school week the order and the ratios hold, not the decimals.
 *
 * @param down - 1 to 4
 */
export function outcomeValues(answer: Answer, down: number): OutcomeValues {
  const byDown = VALUES[ANSWER_TABLE[answer].valuedAs];
  return byDown[Math.min(4, Math.max(1, down)) - 1] ?? byDown[0];
}

/**
 * What each outcome kind is worth beyond {@link outcomeValues} when it happens against a family: a completion behind a
 * pressure goes further, a takeaway comes back further. Nothing on runs, and nothing where open data has no proxy.
 */
export function outcomePremiums(family: Family, answer: Answer): OutcomeValues {
  const proxy = familyFacts(family).openData;
  if (proxy === null || !isPass(answer)) return OPEN_PREMIUMS.base;
  return OPEN_PREMIUMS[proxy];
}
