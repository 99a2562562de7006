// The built program on more and more snaps, from the file on: `check` of a week, and the demo week's report with so large
// an archive. Time must grow no faster than the snaps, and at a million snaps memory stay below papaparse to arrays.
// Prints ratios, never bare seconds.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
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
  const { checked, season } = writeSeasons(size);
  const contenders = [
    { name: 'papaparse to arrays', args: [papaparse, join(checked, 'opponent.csv')] },
    { name: 'node -e 0', args: ['-e', '0'] },
    { name: 'check', args: [cli, 'check', checked], exits: [0, 1] },
    { name: 'report, so many archive snaps', args: [cli, 'report', join(season, 'week-09')], exits: [0, 1] },
  ];
  const measured = measureTogether(contenders, size >= 1_000_000 ? 1 : 3);
  printRatios(`${size} snaps`, measured);
  printArchive(season, size);
  if (size >= 1_000_000) printMemory(measured);
  if (before) printGrowth(before, { size, measured });
  before = { size, measured };
  for (const done of [checked, season]) rmSync(done, { recursive: true });
}
rmSync(folder, { recursive: true });

/** A week of nothing but `size` snaps, and the demo week with as many in its archive. */
function writeSeasons(size: number): { readonly checked: string; readonly season: string } {
  const checked = join(folder, `check-${size}`, 'week-01');
  const season = join(folder, `season-${size}`);
  writeBigSheet(join(checked, 'opponent.csv'), size);
  mkdirSync(season);
  for (const part of ['week-09', 'defense.yaml'])
    cpSync(join('data/demo/season', part), join(season, part), { recursive: true });
  cpSync(join(checked, 'opponent.csv'), join(season, 'archive', 'league.csv'));
  return { checked, season };
}

/** Says how many archive snaps the report speaks of, which is all but the opponent's own, one offense in nine. */
function printArchive(season: string, size: number): void {
  const { archive } = JSON.parse(readFileSync(join(season, 'week-09', 'out', 'report.json'), 'utf8'));
  if (!(archive.snaps > 0.7 * size)) throw new Error(`the report used ${archive.snaps} of ${size} archive snaps`);
  console.log(`  the report rests on ${archive.snaps} archive snaps in ${archive.offenseGames} games`);
}

function printMemory(measured: readonly Measured[]): void {
  const most = measured[0]?.peak ?? Number.NaN;
  for (const { name, peak = Number.NaN } of measured.slice(2)) {
    console.log(`  ${name}: memory ${peak < most ? 'below' : 'NOT BELOW'} papaparse to arrays`);
  }
}

/** By how much the time of each grew for the snaps' growth; no more than the snaps is the goal. */
function printGrowth(from: NonNullable<typeof before>, to: NonNullable<typeof before>): void {
  const times = to.size / from.size;
  to.measured.forEach(({ name, cpu, peak = Number.NaN }, i) => {
    const grew = cpu / (from.measured[i]?.cpu ?? Number.NaN);
    const swelled = peak / (from.measured[i]?.peak ?? Number.NaN);
    console.log(
      `  ${name}: snaps x${times.toFixed(0)}, cpu x${grew.toFixed(1)}, memory x${swelled.toFixed(1)}${grew > times ? '  FASTER THAN THE SNAPS' : ''}`,
    );
  });
}
