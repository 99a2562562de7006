import { describe, expect, it } from 'vitest';
import type { LineForecast } from '../../src/pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../src/pressure/plan/week-plan.ts';
import { lineTable } from '../../src/report/view/line-table.ts';
import { inventedPlan } from './invented-plan.ts';

const plan = inventedPlan();
const ofSituation = (situation: string) =>
  plan.forecast.forecasts.filter(
    (forecast) =>
      forecast.situation === situation && ['run_or_pass', 'screen', 'quick_release'].includes(forecast.target),
  );
const line = (situation: string, snaps: number): LineForecast => {
  return { kind: 'look', look: 'shotgun', label: 'shotgun', situation, snaps, forecasts: ofSituation(situation) };
};
const tableOf = (lines: readonly LineForecast[]) => {
  const shown: WeekPlan = { ...plan, forecast: { ...plan.forecast, line: lines } };
  return lineTable(shown);
};

describe('lineTable', () => {
  it('names the look, then the look with its situation, each with its count of snaps', () => {
    const { rows } = tableOf([line('all', 168), line('third_long', 25)]);
    expect(rows.map(({ name, cells }) => [name, cells[0]?.text])).toEqual([
      ['Shotgun', '168 snaps'],
      ['Shotgun, 3rd and long', '25 snaps'],
    ]);
    expect(rows.map(({ situation }) => situation)).toEqual([undefined, 'third_long']);
  });

  it('writes each forecast with its interval and the count on film, and what Friday should bring', () => {
    const [row] = tableOf([line('all', 168)]).rows;
    expect(row?.cells[1]?.text).toMatch(
      /^\d+% \(\d+-\d+%\); film [\d.]+ of [\d.]+; Friday \d+( to \d+)? of about \d+$/,
    );
    const pass = ofSituation('all').find(({ target }) => target === 'run_or_pass');
    expect(row?.cells[1]?.value).toBe(pass?.classes.find(({ name }) => name === 'pass')?.share);
  });

  it('says nothing of Friday where too few such snaps are expected', () => {
    const lines = [line('fourth_medium', 3)];
    const silent = lines.map((entry) => ({
      ...entry,
      forecasts: entry.forecasts.map((forecast) => ({ ...forecast, expected: [] })),
    }));
    expect(tableOf(silent).rows[0]?.cells[1]?.text).not.toContain('Friday');
  });

  it('says thin under 20 snaps', () => {
    const { rows } = tableOf([line('all', 19), line('all', 20)]);
    expect(rows.map(({ thin }) => thin)).toEqual([true, undefined]);
    expect(rows[0]?.cells[0]?.text).toBe('19 snaps, thin');
  });

  it('has no rows, and says why, for a plan that never knew the look', () => {
    expect(tableOf([]).rows).toEqual([]);
    expect(lineTable(plan).empty).toBe('no look was charted on their film');
  });
});
