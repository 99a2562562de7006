import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { html } from '../page/html.ts';
import { type Block, type Chapter, foldedTables } from '../view/block.ts';
import { breakEvenTable, fitChartingTable, fitMatrix, fitTable, ruleTableView } from '../view/fit-table.ts';

/** Which pressure fits them: right and wrong by family with the rules that fired, by situation, and where it turns. */
export function fitChapter(plan: WeekPlan): Chapter {
  return { id: 'fit', title: 'What fits them', short: 'Fit', blocks: fitBlocks(plan) };
}

/** Without one snap that a rule speaks of, rows of zeros would read as a finding. */
const NOTHING_JUDGED: Block = {
  kind: 'prose',
  html: html`<p>No rule of fit can be judged on what is charted: how they line up, which pass, and what the back does decide it. What to chart next stands below.</p>`,
};

function judgedBlocks(plan: WeekPlan, fit: NonNullable<WeekPlan['fit']>): readonly Block[] {
  return [
    { kind: 'table', table: fitTable(fit) },
    { kind: 'chart', chart: fitMatrix(plan, fit) },
  ];
}

function fitBlocks(plan: WeekPlan): readonly Block[] {
  const { fit } = plan;
  if (fit.families.length === 0) return [];
  const judged = fit.families.some(({ right, wrong }) => right.mean + wrong.mean > 0);
  return [
    ...(judged ? judgedBlocks(plan, fit) : [NOTHING_JUDGED]),
    foldedTables(
      'Where it turns, what is worth charting next, and the rules',
      breakEvenTable(fit),
      fitChartingTable(fit),
      ruleTableView(fit),
    ),
  ];
}
