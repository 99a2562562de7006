import { ANSWERS, type Answer } from '../../game/answers.ts';
import type { Family } from '../../game/families.ts';
import { OUTCOME_KINDS, type OutcomeKind } from '../snap/outcome.ts';
import { baseShares } from './open-data.ts';
import { outcomePremiums, outcomeValues } from './outcome-value.ts';

/** How a snap against one of our calls ended. */
export interface EndedSnap {
  readonly family: Family;
  readonly answer: Answer;
  /** 1 to 4. */
  readonly down: number;
  readonly outcome: OutcomeKind;
}

/** What a snap saved, and the variance of one such snap from the usual spread of outcomes, in points. */
export interface SnapPoints {
  readonly saved: number;
  readonly variance: number;
}

/**
 * Points one of our snaps saved: what four rushers usually give up to that answer on that down, less what it gave up.
 * The values are points of professional scoring, so the order counts and not the decimals.
 */
export function snapPoints({ family, answer, down, outcome }: EndedSnap): SnapPoints {
  const values = outcomeValues(answer, down);
  const { mean, variance } = usual(answer, down);
  const kind = OUTCOME_KINDS.indexOf(outcome);
  const given = (values[kind] as number) + (outcomePremiums(family, answer)[kind] ?? 0);
  return { saved: mean - given, variance };
}

interface Usual {
  readonly mean: number;
  readonly variance: number;
}

/** What four rushers usually give up to each answer on each down; worked out once. */
const USUAL: ReadonlyMap<Answer, readonly Usual[]> = new Map(
  ANSWERS.map((answer) => [answer, [1, 2, 3, 4].map((down) => usualOn(answer, down))]),
);

function usual(answer: Answer, down: number): Usual {
  return USUAL.get(answer)?.[down - 1] ?? usualOn(answer, down);
}

function usualOn(answer: Answer, down: number): Usual {
  const [shares, values] = [baseShares(answer), outcomeValues(answer, down)];
  const moment = (power: number) =>
    values.reduce((sum, value, kind) => sum + (shares[kind] as number) * value ** power, 0);
  const mean = moment(1);
  return { mean, variance: moment(2) - mean ** 2 };
}
