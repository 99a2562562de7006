import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { answerMatrix } from '../view/answer-matrix.ts';
import { type Block, type Chapter, foldedTables } from '../view/block.ts';
import { forecastChart } from '../view/forecast-chart.ts';
import { habitTable } from '../view/habit-table.ts';
import { lineSituationTable, lineTable } from '../view/line-table.ts';
import { tellsChart } from '../view/tells-chart.ts';

/** What they do: forecast beside film, by situation, by how they line up, and the tells game by game. */
export function whatTheyDoChapter(plan: WeekPlan): Chapter {
  return {
    id: 'what-they-do',
    title: 'What they do',
    short: 'What they do',
    blocks: [
      { kind: 'chart', chart: forecastChart(plan) },
      { kind: 'chart', chart: answerMatrix(plan) },
      { kind: 'table', table: lineTable(plan) },
      ...tellBlocks(plan),
      foldedTables('Within a down and distance', lineSituationTable(plan), habitTable(plan)),
    ],
  };
}

/** Nothing is drawn where nothing stood out: the first screen has said so. */
function tellBlocks(plan: WeekPlan): readonly Block[] {
  return plan.forecast.tells.tells.length === 0 ? [] : [{ kind: 'chart', chart: tellsChart(plan) }];
}
