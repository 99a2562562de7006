import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { Block, Chapter } from '../view/block.ts';
import { pressuredTable } from '../view/pressured-table.ts';

/** What they do when we come: by rushers and by coverage faced; nothing where neither is charted. */
export function whenPressuredChapter(plan: WeekPlan): Chapter {
  const tables = [pressuredTable(plan, 'rushers'), pressuredTable(plan, 'coverage')];
  const blocks: readonly Block[] = tables.flatMap((table) => (table === null ? [] : [{ kind: 'table', table }]));
  return { id: 'when-pressured', title: 'What they do when we come', short: 'When we come', blocks };
}
