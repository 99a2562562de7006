import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { Chapter } from '../view/block.ts';

/** What they do when they are pressured. */
export function whenPressuredChapter(_plan: WeekPlan): Chapter {
  return { id: 'when-pressured', title: 'What they do when we come', short: 'Pressured', blocks: [] };
}
