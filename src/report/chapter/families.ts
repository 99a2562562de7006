import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Html, html } from '../page/html.ts';
import { whatIfPanel } from '../page/what-if-panel.ts';
import type { Chapter } from '../view/block.ts';
import { familyChart } from '../view/family-chart.ts';
import { familySituationMatrix } from '../view/family-situation-matrix.ts';
import { byMean } from '../view/family-table.ts';
import { type TableView, textCell, words } from '../view/table-view.ts';
import { whatIfModel } from '../view/what-if-model.ts';
import { familyLabel } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';

/** The families ranked, overall and by situation, with what stands behind every rank. */
export function familiesChapter(plan: WeekPlan): Chapter {
  return {
    id: 'families',
    title: 'The families ranked',
    short: 'Families',
    blocks: [
      { kind: 'prose', html: html`<p>${INTRODUCTION}</p>\n` },
      { kind: 'chart', chart: familyChart(plan) },
      { kind: 'heading', id: 'family-reasons', text: 'Why, family by family' },
      { kind: 'prose', html: reasonList(plan) },
      { kind: 'prose', html: whatIfPanel(whatIfModel(plan)) },
      { kind: 'chart', chart: familySituationMatrix(plan) },
      ...disagreementBlocks(plan),
      { kind: 'table', table: chartingTable(plan) },
    ],
  };
}

const INTRODUCTION =
  'Points saved per ten snaps against the four-man base, on what they are expected to do. The line is where the true figure lies in eight cases of ten; where it crosses zero, nobody knows whether the family beats the base.';

/** Every reason of every family in full sentences, best family first. */
function reasonList({ scores }: WeekPlan): Html {
  const overall = byMean(scores.families.filter(({ situation }) => situation === ALL_SITUATIONS));
  const items = overall.map(
    ({ family, reasons }) => html`<dt>${familyLabel(family)}</dt><dd>${reasons.join(' ')}</dd>`,
  );
  return html`<dl>${items}</dl>\n`;
}

function disagreementBlocks({ scores }: WeekPlan) {
  if (scores.disagreements.length === 0) return [];
  const items = scores.disagreements.map((words) => html`<li>${words}</li>`);
  return [
    { kind: 'prose', html: html`<p>Where the trade and the open data disagree:</p><ul>${items}</ul>\n` } as const,
  ];
}

function chartingTable({ scores }: WeekPlan): TableView {
  return {
    id: 'charting-table',
    caption: 'What charting one more column would buy',
    columns: [words('Column'), words('Charted now'), words('What it would sharpen')],
    rows: scores.charting.map((entry) => ({
      name: entry.column,
      cells: [textCell(`${percent(entry.chartedShare)} of snaps`), textCell(entry.words)],
    })),
    empty: 'nothing is missing that would change a score',
  };
}
