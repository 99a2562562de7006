import { isAnswer, isPass } from '../../game/answers.ts';
import { answersAreClassified } from '../../pressure/forecast/answers-classified.ts';
import type { Forecast, Target } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';

/** The class that stands for both kinds of run where a chart does not tell them apart. */
const ANY_RUN = 'any_run';

/** From so many runs on film without one by the quarterback on, nobody charted him apart. Judgment. */
const RUNS_THAT_WOULD_SHOW = 20;

/**
 * The forecasts of a target that the film can tell, all situations first: what is not known is not shown. Where their
 * passes were charted only as passes, what they do with the ball is run or pass; where no run is charted as the
 * quarterback's, the two runs are one; a question that nobody charted, on their film or another's, has no forecast.
 */
export function knownForecasts(plan: WeekPlan, target: Target): readonly Forecast[] {
  const cells = chartedForecasts(plan, target);
  if (target !== 'answer') return cells;
  const runOrPass = chartedForecasts(plan, 'run_or_pass');
  const all = overall(cells);
  if (all === undefined || !answersAreClassified(plan.forecast.forecasts))
    return runOrPass.map((cell) => ({
      ...cell,
      classes: cell.classes.map(asAnyRun),
      expected: cell.expected.map(asAnyRun),
    }));
  return mergesRuns(all) ? cells.map((cell) => withAnyRun(cell, runOrPass)) : cells;
}

/** The forecasts of a target that somebody charted, in the plan's order. */
function chartedForecasts(plan: WeekPlan, target: Target): readonly Forecast[] {
  const cells = plan.forecast.forecasts.filter((entry) => entry.target === target);
  return overall(cells)?.mostlyFrom === 'nothing' ? [] : cells;
}

function overall(cells: readonly Forecast[]): Forecast | undefined {
  return cells.find(({ situation }) => situation === ALL_SITUATIONS);
}

function mergesRuns({ classes }: Forecast): boolean {
  const countOf = (wanted: string) => classes.find(({ name }) => name === wanted)?.film.count ?? 0;
  return countOf('run') >= RUNS_THAT_WOULD_SHOW && countOf('quarterback_run') === 0;
}

/** The two runs as one, by the forecast of run or pass. */
function withAnyRun(cell: Forecast, runOrPass: readonly Forecast[]): Forecast {
  const either = runOrPass.find(({ situation }) => situation === cell.situation);
  const runs = either?.classes.find(({ name }) => name === 'run');
  if (either === undefined || runs === undefined) return cell;
  const counts = either.expected.filter(({ name }) => name === 'run').map((count) => ({ ...count, name: ANY_RUN }));
  return {
    ...cell,
    classes: [asAnyRun(runs), ...cell.classes.filter(({ name }) => !isRun(name))],
    expected: [...counts, ...cell.expected.filter(({ name }) => !isRun(name))],
  };
}

function asAnyRun<Named extends { readonly name: string }>(entry: Named): Named {
  return entry.name === 'run' ? { ...entry, name: ANY_RUN } : entry;
}

function isRun(name: string): boolean {
  return isAnswer(name) && !isPass(name);
}
