import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { TableSplit } from '../../pressure/tables/tables-result.ts';
import { answerMatrix } from '../view/answer-matrix.ts';
import type { Block, Chapter } from '../view/block.ts';
import { differentTable } from '../view/different-table.ts';
import { forecastChart } from '../view/forecast-chart.ts';
import { habitTable } from '../view/habit-table.ts';
import { lineSituationTable, lineTable } from '../view/line-table.ts';
import { opponentTable } from '../view/opponent-tables.ts';
import type { TableView } from '../view/table-view.ts';
import { tellsChart } from '../view/tells-chart.ts';
import { tempoTable } from '../view/tempo-table.ts';

/** The tables a staff asks for first, and those that are folded. */
const [OPEN, FOLDED] = [
  ['field_zone', 'formation', 'personnel', 'hash'],
  ['look', 'receivers', 'strength_side'],
] as const satisfies readonly (readonly TableSplit[])[];

/** What they do: by situation, field zone, formation, personnel and hash, with their top plays; the tells by game. */
export function whatTheyDoChapter(plan: WeekPlan): Chapter {
  return {
    id: 'what-they-do',
    title: 'What they do',
    short: 'What they do',
    blocks: [
      { kind: 'chart', chart: forecastChart(plan) },
      { kind: 'chart', chart: answerMatrix(plan) },
      ...OPEN.flatMap((by) => splitBlock(plan, by)),
      ...tellBlocks(plan),
      {
        kind: 'folded',
        summary: 'By how they line up, and within a down and distance',
        blocks: [
          ...(plan.different.lines.length === 0 ? [] : [{ kind: 'table', table: differentTable(plan) } as const]),
          ...FOLDED.flatMap((by) => splitBlock(plan, by)),
          ...tableBlock(tempoTable(plan)),
          ...[lineTable(plan), lineSituationTable(plan), habitTable(plan)].map(
            (table) => ({ kind: 'table', table }) as const,
          ),
        ],
      },
    ],
  };
}

function splitBlock(plan: WeekPlan, by: TableSplit): readonly Block[] {
  return tableBlock(opponentTable(plan, by));
}

function tableBlock(table: TableView | null): readonly Block[] {
  return table === null ? [] : [{ kind: 'table', table }];
}

/** Nothing is drawn where nothing stood out: the first screen has said so. */
function tellBlocks(plan: WeekPlan): readonly Block[] {
  return plan.forecast.tells.tells.length === 0 ? [] : [{ kind: 'chart', chart: tellsChart(plan) }];
}
