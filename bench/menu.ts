// How long choosing the menu takes and whether it is proved, for 20, 60 and 200 calls in 13 situations: some invented
// libraries of each size, run in turn. CPU is given as a ratio to the 20-call libraries of the same run; one choice is two
// programs, the best by points and the best by fit, and the whole menu adds the next-best and the prices of the limits.
import { choose } from '../src/pressure/menu/chosen.ts';
import { compileMenu } from '../src/pressure/menu/compile.ts';
import { planMenu } from '../src/pressure/menu/menu.ts';
import { machineLine } from './measure.ts';
import { bigWeek } from './menu-week.ts';

const LIBRARIES = 2;

interface Run {
  /** CPU of the choice alone, and of the whole menu. */
  readonly choiceCpu: number;
  readonly cpu: number;
  readonly proved: boolean;
}

const sizes = process.argv
  .slice(2)
  .map(Number)
  .filter((size) => size > 0);
const bySize = new Map((sizes.length > 0 ? sizes : [20, 60, 200]).map((size) => [size, [] as Run[]]));
for (let seed = 0; seed <= LIBRARIES; seed++) {
  for (const [size, runs] of bySize) {
    const one = run(size, seed);
    if (seed > 0) runs.push(one);
  }
}
const yardstick = median([...bySize.values()][0]!.map(({ cpu }) => cpu));
console.log(machineLine());
for (const [size, runs] of bySize) {
  console.log(
    [
      `${String(size).padStart(3)} calls`,
      `cpu x${(median(runs.map(({ cpu }) => cpu)) / yardstick).toFixed(1)}`,
      `choice alone x${(median(runs.map(({ choiceCpu }) => choiceCpu)) / yardstick).toFixed(1)}`,
      `slowest x${(Math.max(...runs.map(({ cpu }) => cpu)) / yardstick).toFixed(1)}`,
      `proved ${runs.filter(({ proved }) => proved).length} of ${runs.length}`,
    ].join('  '),
  );
}

function run(size: number, seed: number): Run {
  const input = bigWeek(size, seed);
  const { problem } = compileMenu(input);
  const [choiceCpu] = timed(() => choose({ problem, aim: { kind: 'fit', mostGivenUp: null } }, input.exact));
  const [cpu, menu] = timed(() => planMenu(input));
  return { choiceCpu, cpu, proved: menu.kind === 'menu' && menu.proof.proved };
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
