import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { Chapter } from '../view/block.ts';

/** Which pressure fits them. */
export function fitChapter(_plan: WeekPlan): Chapter {
  return { id: 'fit', title: 'What fits them', short: 'Fit', blocks: [] };
}
