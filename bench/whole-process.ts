// Whole processes of the built program against an empty Node process, in one run. Prints ratios, never bare seconds.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { writeBigSheet } from './big-sheet.ts';
import { machineLine, measureTogether, printRatios } from './measure.ts';

execFileSync('node', ['scripts/build.mjs'], { stdio: 'inherit' });
const season = mkdtempSync(join(tmpdir(), 'season-'));
cpSync('data/demo/season', season, { recursive: true });
const thousand = join(season, 'week-01');
writeBigSheet(join(thousand, 'opponent.csv'), 1000);
const cli = resolve('dist/cli.js');
const week = join(season, 'week-09');

console.log(machineLine());
const measured = measureTogether(
  [
    { name: 'node -e 0', args: ['-e', '0'] },
    { name: '--help', args: [cli, '--help'] },
    { name: 'check, 1,000 snaps', args: [cli, 'check', thousand] },
    { name: 'report, demo week', args: [cli, 'report', week] },
  ],
  5,
);
printRatios('Whole process', measured, {
  '--help': 1.6,
  'check, 1,000 snaps': 3.5,
  'report, demo week': 20,
});
rmSync(season, { recursive: true });
