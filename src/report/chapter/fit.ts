import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Block, type Chapter, foldedTables } from '../view/block.ts';
import { breakEvenTable, fitChartingTable, fitMatrix, fitTable, ruleTableView } from '../view/fit-table.ts';

/** Which pressure fits them: right and wrong by family with the rules that fired, by situation, and where it turns. */
export function fitChapter(plan: WeekPlan): Chapter {
  return { id: 'fit', title: 'What fits them', short: 'Fit', blocks: fitBlocks(plan) };
}

function fitBlocks(plan: WeekPlan): readonly Block[] {
  const { fit } = plan;
  if (fit === undefined || fit.families.length === 0) return [];
  return [
    { kind: 'table', table: fitTable(fit) },
    { kind: 'chart', chart: fitMatrix(plan, fit) },
    foldedTables(
      'Where it turns, what is worth charting next, and the rules',
      breakEvenTable(fit),
      fitChartingTable(fit),
      ruleTableView(fit),
    ),
  ];
}
