// The built program on more and more snaps, from the file on: `check` of a week, and a report with an archive. Time must
// grow no faster than the snaps, and memory stay below papaparse to arrays. Prints ratios, never bare seconds.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeBigSheet } from './big-sheet.ts';
import { bundleForBench, type Measured, machineLine, measureTogether, printRatios } from './measure.ts';

const folder = mkdtempSync(join(tmpdir(), 'growth-'));
const cli = join(folder, 'dist', 'cli.js');
execFileSync('node', ['scripts/build.mjs', join(folder, 'dist')], { stdio: 'inherit' });
const papaparse = bundleForBench('read-with-papaparse', folder);
const sizes = process.argv
  .slice(2)
  .map(Number)
  .filter((size) => size > 0);

console.log(machineLine());
let before: { readonly size: number; readonly measured: readonly Measured[] } | undefined;
for (const size of sizes.length > 0 ? sizes : [10_000, 100_000, 1_000_000]) {
  const checked = join(folder, `check-${size}`, 'week-01');
  const season = join(folder, `season-${size}`);
  writeBigSheet(join(checked, 'opponent.csv'), size);
  mkdirSync(season);
  for (const part of ['week-09', 'defense.yaml'])
    cpSync(join('data/demo/season', part), join(season, part), { recursive: true });
  writeBigSheet(join(season, 'archive', 'league.csv'), size);
  const contenders = [
    { name: 'papaparse to arrays', args: [papaparse, join(checked, 'opponent.csv')] },
    { name: 'check', args: [cli, 'check', checked], exits: [0, 1] },
    { name: 'report, so many archive snaps', args: [cli, 'report', join(season, 'week-09')], exits: [0, 1] },
  ];
  const measured = measureTogether(contenders, size >= 1_000_000 ? 1 : 3);
  printRatios(`${size} snaps`, measured);
  if (before) printGrowth(before, { size, measured });
  before = { size, measured };
  for (const done of [checked, season]) rmSync(done, { recursive: true });
}
rmSync(folder, { recursive: true });

/** By how much the time of each grew for the snaps' growth; no more than 1 is the goal. */
function printGrowth(from: NonNullable<typeof before>, to: NonNullable<typeof before>): void {
  const times = to.size / from.size;
  to.measured.forEach(({ name, cpu }, i) => {
    const grew = cpu / (from.measured[i]?.cpu ?? Number.NaN);
    console.log(
      `  ${name}: snaps x${times.toFixed(0)}, cpu x${grew.toFixed(1)}${grew > times ? '  FASTER THAN THE SNAPS' : ''}`,
    );
  });
}
