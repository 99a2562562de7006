import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { RaceLine } from '../../pressure/protection/protection-result.ts';
import type { IntervalRow } from '../chart/interval-row.ts';
import { answerLabel } from '../words/label.ts';
import { fixed } from '../words/number-words.ts';
import { percent, percentRange } from '../words/percent.ts';
import type { ChartView } from './block.ts';
import { isCarried } from './carried-calls.ts';
import { numberCell, numbers, type Row, type TableView, textCell, words } from './table-view.ts';

/** P(home before the ball is out) of each call on a dropback, the rest of the answers in the table. */
export function raceChart(plan: WeekPlan): ChartView {
  const carried = plan.protection.race.filter((line) => isCarried(plan)(line.call));
  const lines = raceAgainst(carried, 'dropback');
  return {
    id: 'race',
    title: raceTitle(carried),
    caption:
      'Dot: chance that a rusher is home before a dropback throw, with its 80% interval. Open diamond: the same call against an average offense.',
    drawing: lines.length === 0 ? null : { kind: 'strips', rows: lines.map(raceMark), axis: AXIS },
    empty: 'No call was raced, so nothing is drawn.',
    table: raceTable(carried),
  };
}

/** The race lines against one answer, best first. */
export function raceAgainst(race: readonly RaceLine[], answer: string): readonly RaceLine[] {
  return race.filter((line) => line.answer === answer).sort((a, b) => b.home - a.home);
}

const AXIS = { title: 'Home before a dropback throw', domain: [0, 1], format: 'percent', reference: null } as const;

function raceMark({ call, home, low, high, typical, firstArrival }: RaceLine): IntervalRow {
  const note = `${percent(home)}, first man at ${fixed(firstArrival, 1)} s`;
  return { id: call, label: call, note, state: 'solid', value: home, low, high, second: typical };
}

function raceTitle(race: readonly RaceLine[]): string {
  const best = raceAgainst(race, 'dropback')[0];
  if (best === undefined) return 'Who is home before the ball is out';
  return `${best.call} is home before the ball is out on about ${percent(best.home)} of their dropbacks`;
}

function raceTable(race: readonly RaceLine[]): TableView {
  return {
    id: 'race-table',
    caption: 'Home before the ball is out, by call and answer',
    columns: [
      words('Call'),
      words('Against'),
      numbers('Home in time, 80% interval'),
      numbers('Against an average offense'),
      numbers('First man there'),
      numbers('Timed throws behind it'),
    ],
    rows: race.map(raceRow),
    empty: 'no call was raced',
  };
}

function raceRow(line: RaceLine): Row {
  const timed = line.timedThrows === 0 ? 'none, published curve' : String(line.timedThrows);
  return {
    name: line.call,
    cells: [
      textCell(answerLabel(line.answer)),
      numberCell(`${percent(line.home)} (${percentRange(line.low, line.high)})`, line.home),
      numberCell(percent(line.typical), line.typical),
      numberCell(`${fixed(line.firstArrival, 1)} s`, line.firstArrival),
      numberCell(timed, line.timedThrows),
    ],
  };
}
