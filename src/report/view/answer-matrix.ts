import type { Forecast } from '../../pressure/forecast-result.ts';
import type { WeekPlan } from '../../pressure/week-plan.ts';
import { answerLabel } from '../words/label.ts';
import { counted } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { ALL_SITUATIONS, situationLabel } from '../words/situation-label.ts';
import type { ChartView } from './block.ts';
import { forecastsOf } from './forecast-table.ts';
import { numberCell, numbers, type Row, type TableView, textCell, thinMark, words } from './table-view.ts';

/** Situation by answer: the forecast share in every cell. */
export function answerMatrix(plan: WeekPlan): ChartView {
  return {
    id: 'answers-by-situation',
    title: matrixTitle(plan),
    caption:
      'Forecast share of each answer, in percent. Darker is more often. Hatched: no such snap on their film; the number then comes from elsewhere.',
    spec: null,
    empty: 'No situation was forecast, so nothing is drawn.',
    tinted: 'tinted',
    table: matrixTable(plan, matrixCells(plan)),
  };
}

/** The answer forecasts situation by situation. */
export function matrixCells(plan: WeekPlan): readonly Forecast[] {
  return forecastsOf(plan, 'answer').filter((cell) => cell.situation !== ALL_SITUATIONS);
}

function matrixTitle(plan: WeekPlan): string {
  const screens = matrixCells(plan)
    .map((cell) => ({ cell, share: cell.classes.find((entry) => entry.name === 'screen')?.share ?? 0 }))
    .sort((a, b) => b.share - a.share)[0];
  if (screens === undefined) return 'Answers by situation';
  return `Screens are likeliest on ${situationLabel(plan, screens.cell.situation)}: ${percent(screens.share)} of snaps`;
}

function matrixTable(plan: WeekPlan, cells: readonly Forecast[]): TableView {
  const names = cells[0]?.classes.map((entry) => entry.name) ?? [];
  return {
    id: 'answers-by-situation-table',
    caption: 'Forecast share of each answer by situation',
    columns: [
      words('Situation'),
      numbers('Snaps on film'),
      ...names.map((name) => numbers(answerLabel(name))),
      words('Mostly from'),
    ],
    rows: cells.map((cell) => matrixRow(plan, cell)),
    empty: 'no situation was forecast',
  };
}

function matrixRow(plan: WeekPlan, cell: Forecast): Row {
  const snaps = cell.ownSnaps === 0 ? 'no snaps' : counted(cell.ownSnaps, 'snap', 'snaps');
  return {
    name: situationLabel(plan, cell.situation),
    situation: cell.situation,
    ...thinMark(cell.thin),
    cells: [
      numberCell(cell.thin && cell.ownSnaps > 0 ? `${snaps}, thin` : snaps, cell.ownSnaps),
      ...cell.classes.map((entry) => numberCell(percent(entry.share), entry.share)),
      textCell(cell.mostlyFrom),
    ],
  };
}
