// How long choosing the menu takes and how far it is proved, for 20, 60 and 200 calls in 13 situations: some invented
// libraries of each size, run in turn, by the search alone and with the exact solver for what it leaves open. CPU is given as a ratio to the 20-call libraries of the same run, gaps in points a
// game by the plan's measure and as a share of what the menu is worth.
import { chooseMenu } from '../src/pressure/menu/choice.ts';
import { compileMenu } from '../src/pressure/menu/compile.ts';
import { loadExactSolver } from '../src/stats/exact-solver.ts';
import { machineLine } from './measure.ts';
import { bigWeek } from './menu-week.ts';

/** As for the week's menu in the tool. */
const PARTS = 6000;
const LIBRARIES = 2;

const exact = await loadExactSolver();

interface Run {
  readonly searchCpu: number;
  readonly cpu: number;
  readonly proved: boolean;
  readonly gap: number;
  readonly worth: number;
  readonly programs: number;
}

const sizes = process.argv
  .slice(2)
  .map(Number)
  .filter((size) => size > 0);
const bySize = new Map((sizes.length > 0 ? sizes : [20, 60, 200]).map((size) => [size, [] as Run[]]));
for (let seed = 0; seed <= LIBRARIES; seed++) {
  for (const [size, runs] of bySize) {
    const run = choose(size, seed);
    if (seed > 0) runs.push(run);
  }
}
const yardstick = median([...bySize.values()][0]!.map(({ cpu }) => cpu));
console.log(machineLine());
for (const [size, runs] of bySize) {
  const gaps = runs.map(({ gap }) => gap);
  const shares = runs.map(({ gap, worth }) => gap / worth);
  console.log(
    [
      `${String(size).padStart(3)} calls`,
      `cpu x${(median(runs.map(({ cpu }) => cpu)) / yardstick).toFixed(1)}`,
      `search alone x${(median(runs.map(({ searchCpu }) => searchCpu)) / yardstick).toFixed(1)}`,
      `slowest x${(Math.max(...runs.map(({ cpu }) => cpu)) / yardstick).toFixed(1)}`,
      `proved ${runs.filter(({ proved }) => proved).length} of ${runs.length}`,
      `the search alone falls short by ${median(gaps).toFixed(2)}, at worst ${Math.max(...gaps).toFixed(2)} points (${percent(median(shares))}, ${percent(Math.max(...shares))})`,
      `linear programs ${median(runs.map(({ programs }) => programs))}`,
    ].join('  '),
  );
}

function choose(size: number, seed: number): Run {
  const { problem } = compileMenu(bigWeek(size, seed));
  const [searchCpu, searched] = timed(() => chooseMenu({ problem, wanted: 2, mostParts: PARTS }));
  const [cpu, choice] = timed(() => chooseMenu({ problem, wanted: 2, mostParts: PARTS, exact }));
  const worth = choice?.book.best[0]?.objective ?? Number.NaN;
  const proved = choice?.end.finished ?? false;
  const gap = worth - (searched?.book.best[0]?.objective ?? Number.NaN);
  return { searchCpu, cpu, proved, gap, worth, programs: choice?.book.programs ?? 0 };
}

function timed<T>(work: () => T): [number, T] {
  const start = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(start);
  return [user + system, result];
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

function percent(share: number): string {
  return `${Math.round(100 * share)}%`;
}
