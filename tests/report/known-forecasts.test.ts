import { describe, expect, it } from 'vitest';
import type { Forecast } from '../../src/pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../src/pressure/plan/week-plan.ts';
import { knownForecasts } from '../../src/report/view/known-forecasts.ts';
import { share } from '../../src/stats/share.ts';
import { inventedPlan } from './invented-plan.ts';

/** The invented plan with its forecasts changed. */
function planWith(change: (cell: Forecast) => Forecast): WeekPlan {
  const plan = inventedPlan();
  return { ...plan, forecast: { ...plan.forecast, forecasts: plan.forecast.forecasts.map(change) } };
}
const uncharted = (cell: Forecast): Forecast => ({
  ...cell,
  ownSnaps: 0,
  mostlyFrom: 'nothing',
  classes: cell.classes.map((entry) => ({ ...entry, film: share(0, 0) })),
});
const namesOf = (cell: Forecast | undefined) => cell?.classes.map(({ name }) => name);

describe('what the film can tell', () => {
  it('is run or pass where their passes were charted only as passes', () => {
    const plan = planWith((cell) => (cell.target === 'answer' ? uncharted(cell) : cell));
    const cells = knownForecasts(plan, 'answer');
    expect(cells).toHaveLength(knownForecasts(plan, 'run_or_pass').length);
    expect(new Set(cells.map((cell) => String(namesOf(cell))))).toEqual(new Set(['any_run,pass']));
    const [all] = knownForecasts(plan, 'run_or_pass');
    expect(all?.expected.map(({ name }) => name)).toContain('run');
    expect(cells[0]?.expected.map(({ name }) => name)).toEqual(
      all?.expected.map(({ name }) => (name === 'run' ? 'any_run' : name)),
    );
  });

  it('is run or pass, too, where other offenses alone say which pass', () => {
    const others = (cell: Forecast): Forecast => ({ ...uncharted(cell), mostlyFrom: 'archive' });
    const plan = planWith((cell) => (cell.target === 'answer' ? others(cell) : cell));
    const cells = knownForecasts(plan, 'answer');
    expect(new Set(cells.map((cell) => String(namesOf(cell))))).toEqual(new Set(['any_run,pass']));
  });

  it('is one kind of run where 20 runs and none by the quarterback are charted, with run or pass behind it', () => {
    const noQuarterback = (cell: Forecast): Forecast => ({
      ...cell,
      classes: cell.classes.map((entry) =>
        entry.name === 'quarterback_run' ? { ...entry, film: share(0, entry.film.trials) } : entry,
      ),
    });
    const plan = planWith((cell) => (cell.target === 'answer' ? noQuarterback(cell) : cell));
    const [all] = knownForecasts(plan, 'answer');
    const [runOrPass] = knownForecasts(plan, 'run_or_pass');
    expect(namesOf(all)).toEqual(['any_run', 'screen', 'quick', 'dropback', 'deep_shot', 'movement']);
    expect(all?.classes[0]).toEqual({ ...runOrPass?.classes[0], name: 'any_run' });
    expect(namesOf(knownForecasts(inventedPlan(), 'answer')[0])).toContain('quarterback_run');
  });

  it('is nothing at all of what nobody charted', () => {
    const plan = planWith((cell) => (cell.target === 'motion' ? uncharted(cell) : cell));
    expect(knownForecasts(plan, 'motion')).toEqual([]);
    expect(knownForecasts(plan, 'screen')).not.toEqual([]);
  });
});
