import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { FamilyScore } from '../../pressure/score/score-result.ts';
import { percent } from '../words/percent.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';

/**
 * The score of a family over all situations, when the plan carries one.
 *
 * @param family - id of the family
 */
export function overallScore(plan: WeekPlan, family: string): FamilyScore | undefined {
  return plan.scores.families.find((score) => score.family === family && score.situation === ALL_SITUATIONS);
}

/** How sure a family is, in a coach's words: the chance that it beats the base, and the verdict. */
export function howSure(score: FamilyScore | undefined): string {
  if (score === undefined) return 'not scored';
  if (score.family === 'base') return 'what the others are measured against';
  return `better than the base: ${percent(score.chanceBetterThanBase)} likely; ${score.verdict}`;
}
