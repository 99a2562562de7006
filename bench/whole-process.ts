// Whole processes of the built program against an empty Node process, in one run. Prints ratios, never bare seconds.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeBigSheet } from './big-sheet.ts';
import { machineLine, measureTogether, printRatios } from './measure.ts';

const season = mkdtempSync(join(tmpdir(), 'season-'));
execFileSync('node', ['scripts/build.mjs', join(season, 'dist')], { stdio: 'inherit' });
// As it lies in the package: without the word Node guesses what kind each file is, which takes a while.
writeFileSync(join(season, 'package.json'), '{ "type": "module" }');
cpSync('data/demo/season', season, { recursive: true });
// In seasons of its own, or the demo's weeks would take it for film of an earlier week: one with the demo's calls, archive
// and own film around it, and one with nothing else.
const among = join(season, 'among', 'week-10');
const alone = join(season, 'alone', 'week-10');
cpSync('data/demo/season', join(season, 'among'), { recursive: true });
for (const thousand of [among, alone]) writeBigSheet(join(thousand, 'opponent.csv'), 1000);
const cli = join(season, 'dist', 'cli.js');
const week = join(season, 'week-09');

console.log(machineLine());
const measured = measureTogether(
  [
    { name: 'node -e 0', args: ['-e', '0'] },
    { name: '--help', args: [cli, '--help'] },
    { name: 'check, 1,000 snaps in a season', args: [cli, 'check', among], exits: [0, 1] },
    { name: 'check, 1,000 snaps alone', args: [cli, 'check', alone], exits: [0, 1] },
    { name: 'report, demo week', args: [cli, 'report', week] },
    { name: 'halftime, demo week', args: [cli, 'halftime', week], exits: [0, 1] },
  ],
  5,
);
printRatios('Whole process', measured, {
  '--help': 1.6,
  'check, 1,000 snaps in a season': 3.5,
  'report, demo week': 20,
  'halftime, demo week': 5,
});
rmSync(season, { recursive: true });
