// The built program on sheets of 20 to 40 MB that are wrong in every row, 800,000 faults together: the week is checked and
// reported on all the same, from the demo week's own sheets. Prints ratios, never bare seconds; memory has a limit of its own.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type FaultySheet, writeFaultySheet } from './faulty-sheet.ts';
import { bundleForBench, machineLine, measureTogether, printRatios } from './measure.ts';

/** Short rows with a fault each, short ones with two, long ones with three. */
const SHEETS: readonly FaultySheet[] = [
  { rows: 800_000, faults: 1, wide: false },
  { rows: 400_000, faults: 2, wide: false },
  { rows: 267_000, faults: 3, wide: true },
];

/** Peak memory in MiB that no command may reach. */
const MOST_MEMORY = 1024;

const folder = mkdtempSync(join(tmpdir(), 'faults-'));
const cli = join(folder, 'dist', 'cli.js');
execFileSync('node', ['scripts/build.mjs', join(folder, 'dist')], { stdio: 'inherit' });
const papaparse = bundleForBench('read-with-papaparse', folder);

console.log(machineLine());
for (const sheet of SHEETS) {
  const week = join(folder, 'season', 'week-09');
  cpSync('data/demo/season', join(folder, 'season'), { recursive: true });
  writeFaultySheet(join(week, 'opponent-faulty.csv'), sheet);
  const contenders = [
    { name: 'papaparse to arrays', args: [papaparse, join(week, 'opponent-faulty.csv')] },
    { name: 'node -e 0', args: ['-e', '0'] },
    { name: 'check', args: [cli, 'check', week], exits: [1] },
    { name: 'report', args: [cli, 'report', week], exits: [1] },
  ];
  const measured = measureTogether(contenders, 3);
  printRatios(`${sheet.rows} rows, ${sheet.faults} faults each`, measured, { check: 4.5, report: 9 });
  for (const { name, peak = Number.NaN } of measured.slice(2))
    console.log(`  ${name}: memory ${peak < MOST_MEMORY ? 'below' : 'NOT BELOW'} ${MOST_MEMORY} MiB`);
  rmSync(join(folder, 'season'), { recursive: true });
}
rmSync(folder, { recursive: true });
