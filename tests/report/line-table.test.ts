import { describe, expect, it } from 'vitest';
import type { LineForecast } from '../../src/pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../src/pressure/plan/week-plan.ts';
import { lineSituationTable, lineTable } from '../../src/report/view/line-table.ts';
import { inventedPlan } from './invented-plan.ts';

const plan = inventedPlan();
const ofSituation = (situation: string) =>
  plan.forecast.forecasts.filter(
    (forecast) =>
      forecast.situation === situation && ['run_or_pass', 'screen', 'quick_release'].includes(forecast.target),
  );
const line = (situation: string, snaps: number): LineForecast => {
  return { kind: 'look', look: 'shotgun', situation, snaps, forecasts: ofSituation(situation) };
};
const planOf = (lines: readonly LineForecast[]): WeekPlan => ({ ...plan, forecast: { ...plan.forecast, line: lines } });

describe('lineTable', () => {
  it('shows each look over all snaps; the look within a situation has a table of its own', () => {
    const shown = planOf([line('all', 168), line('third_long', 25)]);
    expect(lineTable(shown).rows.map(({ name, cells }) => [name, cells[0]?.text])).toEqual([['Shotgun', '168']]);
    expect(lineSituationTable(shown).rows.map(({ name }) => name)).toEqual(['Shotgun, 3rd and long']);
  });

  it('writes the runs as counted on film, and how many to expect', () => {
    const [row] = lineTable(planOf([line('all', 168)])).rows;
    const cell = ofSituation('all').find(({ target }) => target === 'run_or_pass');
    const run = cell?.classes.find(({ name }) => name === 'run');
    if (cell === undefined || run === undefined) throw new Error('the invented plan forecasts runs');
    expect(row?.cells[1]?.text).toContain(`${run.film.count} of ${run.film.trials}`);
    expect(row?.cells[1]?.value).toBe(run.film.estimate);
    expect(row?.cells.at(-1)?.text).toMatch(/^\d+%: expect \d+(-\d+)? of \d+$/);
  });

  it('gives no count to expect where too few such snaps are coming', () => {
    const [entry] = [line('fourth_medium', 3)];
    if (entry === undefined) throw new Error('a line was written above');
    const forecasts = entry.forecasts.map((forecast) => ({ ...forecast, expected: [] }));
    const [row] = lineSituationTable(planOf([{ ...entry, forecasts }])).rows;
    expect(row?.cells.at(-1)?.text).toMatch(/^\d+%$/);
  });

  it('marks looks under 20 snaps as thin', () => {
    expect(lineTable(planOf([line('all', 19), line('all', 20)])).rows.map(({ thin }) => thin)).toEqual([
      true,
      undefined,
    ]);
  });

  it('has no rows, and says why, for a plan that never knew the look', () => {
    expect(lineTable(planOf([])).rows).toEqual([]);
    expect(lineTable(plan).empty).toBe('no look is charted on their film');
  });
});
