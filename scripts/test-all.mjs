// The whole test run: static checks, then every vitest suite. The last line counts what really ran.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { runChecks } from './check.mjs';

mkdirSync('.tmp', { recursive: true });
const file = '.tmp/vitest.json';
rmSync(file, { force: true });
const checks = runChecks();
const run = spawnSync('npx', ['vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${file}`], {
  stdio: 'inherit',
});

let tests;
try {
  tests = JSON.parse(readFileSync(file, 'utf8'));
} catch {
  tests = { numPassedTests: 0, numFailedTests: 1, numPendingTests: 0, testResults: [] };
}
const brokenFiles = tests.testResults.filter((f) => f.status === 'failed' && f.assertionResults.length === 0).length;
const passed = checks.passed + tests.numPassedTests;
let failed = checks.failed + tests.numFailedTests + brokenFiles;
if (failed === 0 && (run.status !== 0 || tests.numPassedTests === 0)) failed = 1;
const skipped = tests.numPendingTests > 0 ? `, ${tests.numPendingTests} skipped` : '';
console.log(`${passed} passed, ${failed} failed${skipped}`);
process.exit(failed === 0 ? 0 : 1);
