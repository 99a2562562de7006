import type { Forecast } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { Grid } from '../chart/matrix-grid.ts';
import { answerLabel } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { ALL_SITUATIONS, situationLabel } from '../words/situation-label.ts';
import type { ChartView } from './block.ts';
import { forecastTable } from './forecast-table.ts';
import { knownForecasts } from './known-forecasts.ts';

/** Situation by answer: the forecast share in every cell. */
export function answerMatrix(plan: WeekPlan): ChartView {
  const cells = matrixCells(plan);
  return {
    id: 'answers-by-situation',
    title: matrixTitle(plan),
    caption:
      'What to expect of 100 snaps. A stronger tint is more often. Situations without a snap on film are left out.',
    drawing: cells.every(({ ownSnaps }) => ownSnaps === 0) ? null : { kind: 'grid', grid: answerGrid(cells) },
    empty: 'Their answers are not charted by situation, so nothing is drawn.',
    table: forecastTable(cells, TABLE_NAME),
  };
}

const TABLE_NAME = { id: 'answers-by-situation-table', caption: 'What they do with the ball, situation by situation' };

/** The answer forecasts situation by situation. */
export function matrixCells(plan: WeekPlan): readonly Forecast[] {
  return knownForecasts(plan, 'answer').filter((cell) => cell.situation !== ALL_SITUATIONS);
}

function answerGrid(cells: readonly Forecast[]): Grid {
  const rows = cells
    .filter(({ ownSnaps }) => ownSnaps > 0)
    .map((cell) => ({
      label: situationLabel(cell.situation),
      note: snapNote(cell),
      cells: cell.classes.map((entry) => ({
        text: percent(entry.share),
        strength: entry.share / DARKEST_SHARE,
        state: 'filled' as const,
      })),
    }));
  return { columns: cells[0]?.classes.map((entry) => answerLabel(entry.name)) ?? [], noteTitle: 'Snaps on film', rows };
}

/** A share that is drawn in the darkest tint; judgment, so that screens and deep shots still differ. */
const DARKEST_SHARE = 0.45;

function snapNote(cell: Forecast): string {
  return cell.thin ? `${cell.ownSnaps}, thin` : String(cell.ownSnaps);
}

function matrixTitle(plan: WeekPlan): string {
  const cells = matrixCells(plan);
  if (cells.every(({ ownSnaps }) => ownSnaps === 0)) return 'What they do by situation is not charted';
  if (!cells.some(({ classes }) => classes.some(({ name }) => name === 'screen'))) return 'Run or pass by situation';
  const screens = cells
    .filter(({ thin }) => !thin)
    .map((cell) => ({ cell, share: cell.classes.find((entry) => entry.name === 'screen')?.share ?? 0 }))
    .sort((a, b) => b.share - a.share)[0];
  if (screens === undefined) return 'Answers by situation';
  return `Most screens on ${situationLabel(screens.cell.situation)}: ${percent(screens.share)} of snaps`;
}
