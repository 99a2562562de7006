import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { html } from '../page/html.ts';
import type { Chapter } from '../view/block.ts';
import { isCarried } from '../view/carried-calls.ts';
import { fateTable } from '../view/fate-table.ts';
import { freeRusherTable } from '../view/free-rusher-table.ts';
import { raceChart } from '../view/race-chart.ts';
import { raceCurveChart } from '../view/race-curve-chart.ts';

/** When they are pressured: who comes free, and whether he is home before the ball is out. */
export function whenPressuredChapter(plan: WeekPlan): Chapter {
  const matched = plan.protection.calls.filter((entry) => isCarried(plan)(entry.call));
  return {
    id: 'when-pressured',
    title: 'When they are pressured',
    short: 'Pressured',
    blocks: [
      { kind: 'prose', html: html`<p>${INTRODUCTION}</p>\n` },
      { kind: 'chart', chart: raceChart(plan) },
      { kind: 'chart', chart: raceCurveChart(plan) },
      { kind: 'heading', id: 'free-rushers', text: 'Who comes free' },
      { kind: 'table', table: freeRusherTable(matched) },
      { kind: 'folded', summary: 'Every call against the protections expected most', table: fateTable(matched) },
    ],
  };
}

const INTRODUCTION =
  'A rusher is home when he is there before the ball is out. The chance is worked out from his path, who blocks him, and how long they hold the ball on each answer.';
