import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { planWeek } from '../pressure/plan/plan-week.ts';
import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import type { ExactSolver } from '../stats/exact-solver.ts';
import type { WeekInputs } from './read-week.ts';
import type { Terminal } from './terminal.ts';
import { VERSION } from './version.ts';

/** Works a week's plan out from what was read of its folder, telling the terminal what it is at. */
export async function workOutPlan(week: WeekInputs, terminal: Terminal): Promise<WeekPlan> {
  const plan = planWeek({
    ...week,
    exact: await solverFor(week),
    date: terminal.today,
    version: VERSION,
    onStage: (stage) => terminal.progress(stage),
  });
  terminal.progress('');
  return plan;
}

/** Pressures up to which the menu's own search ended with a proof: the demo's weeks, invented libraries of twenty. */
const SMALL_LIBRARY = 24;

async function solverFor({ library }: WeekInputs): Promise<ExactSolver | undefined> {
  const pressures = library?.calls.filter(({ family }) => family !== 'base').length ?? 0;
  if (pressures <= SMALL_LIBRARY) return undefined;
  const { loadExactSolver } = await import('../stats/exact-solver.ts');
  return loadExactSolver(solverFile());
}

/** The solver's own file beside the built program; undefined when run from source, where the package finds it. */
function solverFile(): string | undefined {
  const places = ['./highs.wasm', '../highs.wasm'].map((place) => fileURLToPath(new URL(place, import.meta.url)));
  return places.find((place) => existsSync(place));
}
